/**
 * Every field of the rig document: what it is called, what it measures, between which limits it is accepted, the range
 * that is natural for a slider, and a line of help. The schema, the checks and a rig sheet on screen are all made from
 * this one table. `[]` in a path stands for any item of a list. Limits and ranges are in SI units.
 */
import { CAUTIOUS_LIMITS } from "./cautiousLimits.ts";
import { BASIS_HELP, conditionFields, type Field, type FieldTable, KNOTS, ownFields, ratedFields } from "./field.ts";
import { anchorFields } from "./fieldsAnchor.ts";
import { lineFields } from "./fieldsLine.ts";
import { stockFields } from "./fieldsStock.ts";

const general: FieldTable = {
  id: {
    kind: "text",
    label: "Id",
    longest: 60,
    help: "A short name of its own, without spaces, by which wear records refer to this rig even when it is renamed.",
  },
  name: { kind: "text", label: "Name", longest: 120, help: "What this rig is called." },
  notes: { kind: "text", label: "Notes", longest: 4000, help: "Anything worth keeping with the rig." },
  invented: {
    kind: "flag",
    label: "Invented",
    help: "Set when the numbers are made up, for a demonstration; shown with every result.",
  },
  span: {
    kind: "quantity",
    label: "Span",
    dimension: "length",
    limits: [2, 3000],
    natural: [15, 150],
    help: "Horizontal distance from anchor A to anchor B.",
  },
  rise: {
    kind: "quantity",
    label: "Rise",
    dimension: "length",
    limits: [-300, 300],
    natural: [-10, 10],
    fallback: "0 m",
    help: "Height of anchor B above anchor A; negative when B is lower.",
  },
  latitude: {
    kind: "choice",
    label: "Latitude",
    options: [
      { value: "low", label: "Below 30°" },
      { value: "middle", label: "30° to 50°" },
      { value: "high", label: "Above 50°" },
    ],
    help: "Where the rig hangs. Left out, the strong sun below 30° counts.",
  },
  requiredFactor: {
    kind: "quantity",
    label: "Required factor for falls",
    dimension: "ratio",
    limits: [1, 20],
    natural: [1, 5],
    fallback: 2,
    help: "How many times its largest load every part must hold in a leash fall.",
  },
  requiredAfterFailure: {
    kind: "quantity",
    label: "Required factor after a failure",
    dimension: "ratio",
    limits: [1, 20],
    natural: [1, 4],
    fallback: 1.5,
    help: "How many times its largest load every part must hold once something else has failed: the main line, or a leg.",
  },
  requiredClearance: {
    kind: "quantity",
    label: "Required height above the ground",
    dimension: "length",
    limits: [0, 50],
    natural: [0.5, 5],
    fallback: "1 m",
    help: "How far the walker's feet must stay above the ground in any fall.",
  },
  requiredFactorBasis: { kind: "basis", label: "Basis of the required factor", help: BASIS_HELP },
  "unconfirmed[]": {
    kind: "text",
    label: "Not confirmed",
    longest: 200,
    help: "Path of a value that nobody has confirmed.",
  },
};

const ring: FieldTable = {
  "rings[].name": {
    kind: "text",
    label: "Name",
    longest: 80,
    help: "What this ring is called; every ring has its own.",
  },
  "rings[].mass": {
    kind: "quantity",
    label: "Mass",
    dimension: "mass",
    limits: [0.005, 5],
    natural: [0.05, 0.4],
    help: "Mass of the ring.",
  },
  "rings[].clearance": {
    kind: "quantity",
    label: "Clearance",
    dimension: "length",
    limits: [0.002, 0.2],
    natural: [0.01, 0.05],
    fallback: "25 mm",
    help: "Farthest that the ring's middle can be from either line.",
  },
  "rings[].friction": {
    kind: "quantity",
    label: "Friction",
    dimension: "ratio",
    limits: [0, 1],
    natural: [0, 0.5],
    fallback: 0.15,
    help: "Coefficient of friction of the ring along the webbing.",
  },
  ...ratedFields("rings[]", "the ring", [15e3, 60e3]),
  ...conditionFields("rings[].condition"),
  ...ownFields("rings[]"),
};

const leash: FieldTable = {
  "leash.stock": { kind: "stock", label: "Rope", help: "What the leash is made of." },
  "leash.length": {
    kind: "quantity",
    label: "Length",
    dimension: "length",
    limits: [0.2, 10],
    natural: [0.8, 2.5],
    help: "From the ring to the tie-in, tied and unloaded.",
  },
  "leash.knots[].kind": { kind: "choice", label: "Knot", options: KNOTS, help: "A rope leash gives way in its knot." },
  "leash.knots[].where": {
    kind: "choice",
    label: "Where",
    options: [
      { value: "ring", label: "At the ring" },
      { value: "harness", label: "At the harness" },
      { value: "middle", label: "Between" },
    ],
    help: "Where in the leash the knot is.",
  },
  ...conditionFields("leash.condition"),
  "leash.falls": {
    kind: "quantity",
    label: "Falls",
    dimension: "count",
    limits: CAUTIOUS_LIMITS["leash.falls"],
    natural: [0, 200],
    help: "Leash falls it has held so far; 0 for a new one. Leave it out only when nobody knows.",
  },
  "leash.sheathSlip": {
    kind: "quantity",
    label: "Sheath slip",
    dimension: "share",
    limits: CAUTIOUS_LIMITS["leash.sheathSlip"],
    natural: [0, 0.05],
    help: "How far the sheath has slipped along the core, over the length of the leash: 14 mm on 1.4 m is 1 %. A rope whose sheath has slipped is taken out of use. Leave it out only when nobody has looked.",
  },
  "leash.glazed": {
    kind: "quantity",
    label: "Glazed by heat",
    dimension: "share",
    limits: CAUTIOUS_LIMITS["leash.glazed"],
    natural: [0, 0.3],
    help: "Share of the section that heat has glazed, where it is worst: hard, shiny fibre carries nothing. Leave it out only when nobody has looked.",
  },
  ...ownFields("leash"),
};

const walker: FieldTable = {
  ...ratedFields("harness", "the tie-in of the harness", [10e3, 25e3]),
  ...conditionFields("harness.condition"),
  ...ownFields("harness"),
  "walker.mass": {
    kind: "quantity",
    label: "Mass",
    dimension: "mass",
    limits: [20, 250],
    natural: [45, 120],
    help: "The heaviest walker with everything worn.",
  },
  "walker.rescuer": {
    kind: "quantity",
    label: "Mass of a rescuer",
    dimension: "mass",
    limits: [20, 250],
    natural: [45, 120],
    help: "The heaviest person who would come to hang beside the walker in a rescue. Leave it out, and no rescue is looked at.",
  },
  "walker.tieIn": {
    kind: "quantity",
    label: "Height of the tie-in",
    dimension: "length",
    limits: [0.3, 2],
    natural: [0.8, 1.3],
    fallback: "1 m",
    help: "Height of the tie-in above the line when standing.",
  },
  "walker.lateral": {
    kind: "quantity",
    label: "Sideways offset",
    dimension: "length",
    limits: [0, 2],
    natural: [0, 1],
    fallback: "0.3 m",
    help: "How far to the side of the line the tie-in is when the feet let go.",
  },
  "walker.at": {
    kind: "quantity",
    label: "Place on the line",
    dimension: "position",
    limits: [0.01, 0.99],
    natural: [0.05, 0.95],
    fallback: 0.5,
    help: "Where the walker stands first: 0 at anchor A, 1 at anchor B.",
  },
};

const ground: FieldTable = {
  "ground[][0]": {
    kind: "quantity",
    label: "Along the span",
    dimension: "length",
    limits: [-1000, 4000],
    help: "Horizontal distance from anchor A.",
  },
  "ground[][1]": {
    kind: "quantity",
    label: "Height",
    dimension: "length",
    limits: [-3000, 500],
    natural: [-100, 0],
    help: "Height of the ground relative to anchor A: negative below it.",
  },
};

/** All fields by path, in the order of the document. */
export const FIELDS: FieldTable = {
  ...general,
  ...stockFields(),
  ...anchorFields("anchorA", "anchor A"),
  ...anchorFields("anchorB", "anchor B"),
  ...lineFields("main", "the main line"),
  ...lineFields("backup", "the backup"),
  ...ring,
  ...leash,
  ...walker,
  ...ground,
};

/** The field at a path such as `main.sections[1].length`; undefined when nothing of that name is a field. */
export function fieldAt(path: string): Field | undefined {
  const pattern = path.replace(/\[\d+\]/g, (index, offset: number) =>
    // The two numbers of a pair have meanings of their own, so their index stays.
    /(?:ground|curve|branches)\[\d+\]$/.test(path.slice(0, offset)) ? index : "[]",
  );
  return Object.hasOwn(FIELDS, pattern) ? FIELDS[pattern] : undefined;
}
