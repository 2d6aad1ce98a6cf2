/** Fields of an anchor: rock points, legs, hardware. */
import { conditionFields, type Field, type FieldTable, ownFields, ratedFields } from "./field.ts";

/** Fields of a rock point or of a part of the hardware; `special`: those that the other does not have. */
function partFields(prefix: string, what: string, special: FieldTable): FieldTable {
  return {
    [`${prefix}.name`]: { kind: "text", label: "Name", longest: 80, help: `What this part of ${what} is called.` },
    [`${prefix}.kind`]: {
      kind: "choice",
      label: "Kind",
      options: [
        { value: "bolt", label: "Bolt" },
        { value: "sling", label: "Sling" },
        { value: "shackle", label: "Shackle" },
        { value: "tree", label: "Tree" },
        { value: "other", label: "Something else" },
      ],
      help: "What kind of part it is. Bolts are weaker along their axis than across it (EN 959:2018 asks for 15 kN and 25 kN); give the angle of the pull.",
    },
    ...ratedFields(prefix, "the part", [10e3, 60e3]),
    [`${prefix}.rigged`]: {
      kind: "choice",
      label: "Rigged",
      options: [
        { value: "straight", label: "Straight, or as rated" },
        { value: "choked", label: "Choked" },
        { value: "basket", label: "Basket" },
      ],
      help: "How a sling is rigged, when its rated strength is that of a straight pull: choked it holds about 0.8 of it (EN 1492-1, from memory), in a basket more. Say straight for one that is rated as it is rigged. Left out, a sling counts as choked.",
    },
    ...Object.fromEntries(Object.entries(special).map(([key, field]) => [`${prefix}.${key}`, field])),
    ...conditionFields(`${prefix}.condition`),
    ...ownFields(prefix),
  };
}

const PULL_ANGLE: Field = {
  kind: "quantity",
  label: "Angle of the pull",
  dimension: "angle",
  limits: [0, Math.PI / 2],
  natural: [0, Math.PI / 2],
  help: "Angle between the pull on this bolt and the bolt's axis: 90° across it, 0° straight out of the rock. Left out, it is taken from the anchor; without that the bolt counts as pulled in its worst direction.",
};
const LEG_CARRIES: Field = {
  kind: "choice",
  label: "Carries",
  options: [
    { value: "both", label: "Both lines" },
    { value: "main", label: "The main line" },
    { value: "backup", label: "The backup" },
  ],
  fallback: "both",
  help: "Which line hangs on this part.",
};

export function anchorFields(prefix: "anchorA" | "anchorB", what: string): FieldTable {
  return {
    ...partFields(`${prefix}.points[]`, what, { pullAngle: PULL_ANGLE }),
    [`${prefix}.legAngle`]: {
      kind: "quantity",
      label: "Angle between the legs",
      dimension: "angle",
      // Just below 180°: straight legs would need an infinite force.
      limits: [0, (179 * Math.PI) / 180],
      natural: [0, (120 * Math.PI) / 180],
      help: "Angle between the outermost legs. Up to 90° is usual; at 120° each of two legs carries the whole load.",
    },
    [`${prefix}.legLength`]: {
      kind: "quantity",
      label: "Length of a leg",
      dimension: "length",
      limits: [0.05, 50],
      natural: [0.3, 5],
      help: "From the rock to where the legs meet.",
    },
    [`${prefix}.axisAngle`]: {
      kind: "quantity",
      label: "Line to the bolts' axes",
      dimension: "angle",
      limits: [0, Math.PI / 2],
      natural: [0, Math.PI / 2],
      help: "Angle between the line at this anchor and the axes of its bolts: 90° for bolts in flat rock on top, 0° for bolts in a face that looks at the other anchor. The legs may deviate from it by half of the angle between them.",
    },
    [`${prefix}.stiffness`]: {
      kind: "quantity",
      label: "Stiffness",
      dimension: "stiffness",
      limits: [1e3, 1e9],
      natural: [5e4, 5e6],
      help: "Of the whole anchor along the line; left out, the anchor does not give.",
    },
    ...partFields(`${prefix}.hardware[]`, what, { carries: LEG_CARRIES }),
  };
}
