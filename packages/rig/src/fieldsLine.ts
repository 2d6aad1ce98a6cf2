/** Fields of the main line and of the backup: tension or slack, sections with their wear, ends, connections. */
import { CAUTIOUS_LIMITS } from "./cautiousLimits.ts";
import { conditionFields, type Field, type FieldTable, KNOTS, ownFields, ratedFields } from "./field.ts";
import { YEAR_SECONDS } from "./units.ts";

const place = (label: string, help: string): Field => ({
  kind: "quantity",
  label,
  dimension: "length",
  limits: [0, 3000],
  help,
});
const depth = (help: string): Field => ({
  kind: "quantity",
  label: "Depth",
  dimension: "share",
  limits: [0.001, 0.99],
  natural: [0.01, 0.5],
  help,
});
const extent = (label: string, help: string): Field => ({
  kind: "quantity",
  label,
  dimension: "length",
  limits: [0.005, 10],
  natural: [0.02, 0.5],
  help,
});

function wearFields(prefix: string): FieldTable {
  return {
    [`${prefix}.kind`]: {
      kind: "choice",
      label: "Kind",
      options: [
        { value: "clampMark", label: "Clamp mark" },
        { value: "fallZone", label: "Fall zone" },
        { value: "stitching", label: "Stitching" },
        { value: "abrasion", label: "Abrasion" },
        { value: "heat", label: "Glazed by heat" },
        { value: "cut", label: "Cut" },
      ],
      help: "What weakens the webbing here.",
    },
    [`${prefix}.at`]: place(
      "Place",
      "Its middle, in unstretched webbing from the end of the section nearer to anchor A.",
    ),
    [`${prefix}.length`]: extent("Length", "How much webbing it takes up."),
    [`${prefix}.from`]: place(
      "From",
      "Where it begins, in unstretched webbing from the end of the section nearer to A.",
    ),
    [`${prefix}.to`]: place("To", "Where it ends, counted from the same end."),
    [`${prefix}.clamped`]: {
      kind: "quantity",
      label: "Time in the clamp",
      dimension: "time",
      limits: [0, 50 * YEAR_SECONDS],
      natural: [0, 2 * YEAR_SECONDS],
      help: "How long the webbing sat in a weblock at this place.",
    },
    [`${prefix}.load`]: {
      kind: "quantity",
      label: "Tension meanwhile",
      dimension: "force",
      limits: [0, 1e5],
      natural: [0, 10e3],
      help: "Tension it was clamped under, if known.",
    },
    [`${prefix}.falls`]: {
      kind: "quantity",
      label: "Falls",
      dimension: "count",
      limits: [0, 100000],
      natural: [0, 500],
      help: "Leash falls caught on this stretch.",
    },
    [`${prefix}.depth`]: depth("Share of the width, or of the thickness, that is gone or glazed."),
  };
}

function endFields(prefix: string, what: string): FieldTable {
  return {
    [`${prefix}.kind`]: {
      kind: "choice",
      label: "Kind",
      options: [
        { value: "weblock", label: "Weblock" },
        { value: "sewnLoop", label: "Sewn loop" },
        { value: "knot", label: "Knot" },
      ],
      help: `How ${what} is held at this end.`,
    },
    [`${prefix}.knot`]: { kind: "choice", label: "Knot", options: KNOTS, help: "Which knot it is." },
    ...ratedFields(prefix, "the end", [15e3, 60e3]),
    [`${prefix}.slipLoad`]: {
      kind: "quantity",
      label: "Slips above",
      dimension: "force",
      limits: [100, 2e6],
      natural: [5e3, 40e3],
      help: "Load above which the weblock lets webbing through; left out, it does not slip.",
    },
    [`${prefix}.clamped`]: {
      kind: "quantity",
      label: "Time in this clamp",
      dimension: "time",
      limits: [0, 50 * YEAR_SECONDS],
      natural: [0, 2 * YEAR_SECONDS],
      help: "How long the webbing has sat in this weblock without being moved.",
    },
    [`${prefix}.bend`]: {
      kind: "quantity",
      label: "Bend",
      dimension: "ratio",
      limits: CAUTIOUS_LIMITS.bend,
      natural: [1, 20],
      help: "Diameter of the pin that a loop or knot bends over, or of the drum of a weblock, over thickness of the webbing: from 8 on nothing is lost. Left out, the sharpest bend counts.",
    },
    ...conditionFields(`${prefix}.condition`),
    ...ownFields(prefix),
  };
}

function lengthFields(prefix: "main" | "backup"): FieldTable {
  if (prefix === "main") {
    return {
      "main.pretension": {
        kind: "quantity",
        label: "Tension",
        dimension: "force",
        limits: [50, 1e5],
        natural: [1e3, 8e3],
        help: "Tension of the line as it hangs, with nobody on it.",
      },
    };
  }
  return {
    "backup.slack": {
      kind: "quantity",
      label: "Slack",
      dimension: "share",
      limits: [0, 1],
      natural: [0, 0.15],
      tooLow: "the backup would be shorter than the distance between the anchors",
      help: "How much longer the backup is, unstretched, than the distance between the anchors.",
    },
    "backup.length": {
      kind: "quantity",
      label: "Length",
      dimension: "length",
      limits: [0.5, 6000],
      help: "Unstretched length of the backup between the anchors, instead of its slack.",
    },
  };
}

function joints(prefix: "main" | "backup"): FieldTable {
  if (prefix === "main") return {};
  const at: Field = {
    kind: "quantity",
    label: "Place",
    dimension: "position",
    limits: [0.005, 0.995],
    natural: [0.02, 0.98],
    help: "Where along the line: 0 at anchor A, 1 at anchor B.",
  };
  return {
    "backup.connections[].at": at,
    ...ratedFields("backup.connections[]", "the connection", [2e3, 30e3]),
    ...conditionFields("backup.connections[].condition"),
    ...ownFields("backup.connections[]"),
    "backup.tapes[].at": at,
    ...ratedFields("backup.tapes[]", "the tape", [100, 1000]),
    ...conditionFields("backup.tapes[].condition"),
    ...ownFields("backup.tapes[]"),
  };
}

export function lineFields(prefix: "main" | "backup", what: string): FieldTable {
  const section = `${prefix}.sections[]`;
  return {
    ...lengthFields(prefix),
    [`${section}.stock`]: { kind: "stock", label: "Webbing", help: "What this section is made of." },
    [`${section}.length`]: {
      kind: "quantity",
      label: "Length",
      dimension: "length",
      limits: [0.1, 6000],
      help: "Unstretched length; one section has none and takes up the rest of the line.",
    },
    ...conditionFields(`${section}.condition`),
    ...wearFields(`${section}.wear[]`),
    ...ownFields(section),
    ...endFields(`${prefix}.endA`, what),
    ...endFields(`${prefix}.endB`, what),
    ...joints(prefix),
  };
}
