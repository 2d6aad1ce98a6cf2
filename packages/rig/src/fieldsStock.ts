/** Fields of a webbing or rope that the document defines itself. */
import type { FieldTable } from "./field.ts";
import { ratedFields } from "./field.ts";

export function stockFields(): FieldTable {
  return {
    "stocks[].id": { kind: "text", label: "Id", longest: 60, help: "The short name by which sections refer to it." },
    "stocks[].like": {
      kind: "stock",
      label: "Like",
      help: "A webbing or rope from which everything is taken that is not given here.",
    },
    "stocks[].name": { kind: "text", label: "Name", longest: 120, help: "What it is, in words." },
    "stocks[].fibre": {
      kind: "choice",
      label: "Fibre",
      options: [
        { value: "polyamide", label: "Polyamide (nylon)" },
        { value: "polyester", label: "Polyester" },
        { value: "hmpe", label: "HMPE" },
        { value: "aramid", label: "Aramid" },
      ],
      help: "What carries the load; it decides how sun and wet act.",
    },
    "stocks[].form": {
      kind: "choice",
      label: "Form",
      options: [
        { value: "webbing", label: "Flat webbing" },
        { value: "rope", label: "Rope" },
      ],
      help: "Flat webbing loses far more in a knot than rope. Left out and not known from what it is like, it counts as webbing.",
    },
    "stocks[].mass": {
      kind: "quantity",
      label: "Mass per length",
      dimension: "massPerLength",
      limits: [0.002, 2],
      natural: [0.02, 0.12],
      help: "Mass of a metre, unstretched.",
    },
    "stocks[].width": {
      kind: "quantity",
      label: "Width or diameter",
      dimension: "length",
      limits: [0.002, 0.2],
      natural: [0.008, 0.05],
      help: "Width of a webbing, diameter of a rope.",
    },
    ...ratedFields("stocks[]", "it", [10e3, 60e3]),
    "stocks[].curve[][0]": {
      kind: "quantity",
      label: "Stretch",
      dimension: "share",
      limits: [0, 1],
      natural: [0, 0.3],
      help: "Stretch in a slow pull, as a share of the unstretched length.",
    },
    "stocks[].curve[][1]": {
      kind: "quantity",
      label: "Tension",
      dimension: "force",
      limits: [0, 2e6],
      natural: [0, 20e3],
      help: "Tension at that stretch in a slow pull.",
    },
    "stocks[].curveBasis": {
      kind: "basis",
      label: "Basis of stretch and damping",
      help: "Where the curve comes from.",
    },
    "stocks[].branches[][0]": {
      kind: "quantity",
      label: "Extra stiffness",
      dimension: "force",
      limits: [1, 1e8],
      natural: [1e3, 5e4],
      help: "Tension per unit of stretch that a pull faster than the time beside it adds.",
    },
    "stocks[].branches[][1]": {
      kind: "quantity",
      label: "Relaxation time",
      dimension: "time",
      limits: [1e-4, 1e6],
      natural: [1e-3, 10],
      help: "Time in which that extra tension dies away.",
    },
  };
}
