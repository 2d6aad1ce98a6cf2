/**
 * The rig document as a rigger writes it: one JSON file, units in the values. The schema says which fields there are and
 * turns each value into SI units; what fields have to do with one another is checked in `checkLines.ts` and its neighbours.
 */
import * as z from "zod";
import { bare, basis, choice, flag, measured, position, type RigFaultParams, stockId, text } from "./fieldSchemas.ts";
import type { KnotKind, Latitude } from "./rig.ts";
import { fact } from "./rigFacts.ts";
import { describeValue } from "./units.ts";

/** The tag by which a file is known as a rig of ours, with the version of the format. */
export const RIG_TAG = "secondline";
export const RIG_FORMAT = "rig/1";
export const RIG_VERSION = 1;

/** Makes something when it is first asked for: nobody waits for schemas before there is a document. */
function once<T>(make: () => T): () => T {
  let made: { readonly it: T } | undefined;
  return () => {
    made ??= { it: make() };
    return made.it;
  };
}

/** Letters and digits with dots, lines and dashes between them: an id is typed into other files. */
const RIG_ID = /^[\p{L}\p{N}](?:[\p{L}\p{N}._-]*[\p{L}\p{N}])?$/u;
const rigId = once(() =>
  text("id").superRefine((id, ctx) => {
    if (RIG_ID.test(id)) return;
    const [got, expected] = [describeValue(id), fact("expected.shortName", {})];
    const params: RigFaultParams = { got, expected, message: fact("idForm", { got, expected }) };
    ctx.addIssue({ code: "custom", params });
  }),
);

/** What has happened to a part. Every part is asked the same, so that one schema serves them all. */
const condition = once(() =>
  z
    .strictObject({
      outside: measured("leash.condition.outside").optional(),
      sun: measured("leash.condition.sun").optional(),
      age: measured("leash.condition.age").optional(),
      wet: flag("leash.condition.wet").optional(),
    })
    .optional(),
);

const rated = (at: string) => ({ strength: measured(`${at}.strength`), basis: basis(`${at}.basis`).optional() });

/** A factor of one's own needs a reason; a group without either says nothing. The same for every part. */
const own = once(() =>
  z
    .strictObject({
      factor: bare("leash.own.factor").optional(),
      reason: text("leash.own.reason").regex(/\S/).optional(),
    })
    .superRefine(({ factor, reason }, ctx) => {
      if (factor === undefined || reason !== undefined) return;
      const [got, expected] = [fact("got.nothing", {}), fact("expected.reason", {})];
      const params: RigFaultParams = { got, expected, message: fact("ownReason", {}) };
      ctx.addIssue({ code: "custom", path: ["reason"], params });
    })
    .optional(),
);

const stock = once(() =>
  z.strictObject({
    id: text("stocks[].id").min(1),
    like: stockId("stocks[].like").optional(),
    name: text("stocks[].name").optional(),
    fibre: choice<"polyamide" | "polyester" | "hmpe" | "aramid">("stocks[].fibre").optional(),
    form: choice<"webbing" | "rope">("stocks[].form").optional(),
    mass: measured("stocks[].mass").optional(),
    width: measured("stocks[].width").optional(),
    strength: measured("stocks[].strength").optional(),
    basis: basis("stocks[].basis").optional(),
    curve: z
      .array(z.tuple([measured("stocks[].curve[][0]"), measured("stocks[].curve[][1]")]))
      .min(2)
      .max(100)
      .optional(),
    branches: z
      .array(z.tuple([measured("stocks[].branches[][0]"), measured("stocks[].branches[][1]")]))
      .max(8)
      .optional(),
    curveBasis: basis("stocks[].curveBasis").optional(),
  }),
);

const anchorPart = (at: string) => ({
  name: text(`${at}.name`),
  kind: choice<"bolt" | "sling" | "shackle" | "tree" | "other">(`${at}.kind`),
  ...rated(at),
  rigged: choice<"straight" | "choked" | "basket">(`${at}.rigged`).optional(),
  condition: condition(),
  own: own(),
});
const rockPoint = (at: string) =>
  z.strictObject({ ...anchorPart(at), pullAngle: measured(`${at}.pullAngle`).optional() });
const hardware = (at: string) =>
  z.strictObject({
    ...anchorPart(at),
    carries: choice<"main" | "backup" | "both">(`${at}.carries`).optional(),
  });

const anchor = (at: "anchorA" | "anchorB") =>
  z.strictObject({
    points: z
      .array(rockPoint(`${at}.points[]`))
      .min(1)
      .max(12),
    legAngle: measured(`${at}.legAngle`).optional(),
    legLength: measured(`${at}.legLength`).optional(),
    axisAngle: measured(`${at}.axisAngle`).optional(),
    stiffness: measured(`${at}.stiffness`).optional(),
    hardware: z
      .array(hardware(`${at}.hardware[]`))
      .max(20)
      .optional(),
  });

const wear = (at: string) => {
  const field = (name: string) => measured(`${at}.${name}`);
  const [length, depth] = [field("length"), field("depth")];
  const stretch = { from: field("from"), to: field("to") };
  const spot = { at: field("at"), length };
  return z.discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("clampMark"),
      ...spot,
      clamped: field("clamped"),
      load: field("load").optional(),
    }),
    z.strictObject({ kind: z.literal("fallZone"), ...stretch, falls: bare(`${at}.falls`) }),
    z.strictObject({ kind: z.literal("stitching"), ...spot }),
    z.strictObject({ kind: z.literal("abrasion"), ...stretch, depth }),
    z.strictObject({ kind: z.literal("heat"), ...stretch, depth }),
    z.strictObject({ kind: z.literal("cut"), at: spot.at, depth }),
  ]);
};

/** Sections of either line: both are asked the same. */
const sections = once(() =>
  z
    .array(
      z.strictObject({
        stock: stockId("main.sections[].stock"),
        length: measured("main.sections[].length").optional(),
        condition: condition(),
        wear: z.array(wear("main.sections[].wear[]")).max(200).optional(),
        own: own(),
      }),
    )
    .min(1)
    .max(50),
);

function lineEndAt(at: string) {
  const { strength, basis: sourced } = rated(at);
  const common = { bend: bare(`${at}.bend`).optional(), condition: condition(), own: own() };
  return z.discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("weblock"),
      strength,
      basis: sourced,
      slipLoad: measured(`${at}.slipLoad`).optional(),
      clamped: measured(`${at}.clamped`).optional(),
      ...common,
    }),
    z.strictObject({ kind: z.literal("sewnLoop"), strength, basis: sourced, ...common }),
    z.strictObject({
      kind: z.literal("knot"),
      knot: choice<KnotKind>(`${at}.knot`),
      strength: strength.optional(),
      basis: sourced,
      ...common,
    }),
  ]);
}
/** An end of either line. */
const lineEnd = once(() => lineEndAt("main.endA"));

const joints = (at: string) =>
  z
    .array(
      z.strictObject({
        at: position(`${at}.at`),
        ...rated(at),
        condition: condition(),
        own: own(),
      }),
    )
    .max(200)
    .optional();

const backup = once(() =>
  z.strictObject({
    slack: measured("backup.slack").optional(),
    length: measured("backup.length").optional(),
    sections: sections(),
    endA: lineEnd(),
    endB: lineEnd(),
    connections: joints("backup.connections[]"),
    tapes: joints("backup.tapes[]"),
  }),
);

const ring = once(() =>
  z.strictObject({
    name: text("rings[].name").min(1),
    mass: measured("rings[].mass"),
    clearance: measured("rings[].clearance").optional(),
    friction: bare("rings[].friction").optional(),
    ...rated("rings[]"),
    condition: condition(),
    own: own(),
  }),
);

const leash = once(() =>
  z.strictObject({
    stock: stockId("leash.stock"),
    length: measured("leash.length"),
    knots: z
      .array(
        z.strictObject({
          kind: choice<KnotKind>("leash.knots[].kind"),
          where: choice<"ring" | "harness" | "middle">("leash.knots[].where"),
        }),
      )
      .max(12),
    condition: condition(),
    falls: bare("leash.falls").optional(),
    sheathSlip: measured("leash.sheathSlip").optional(),
    glazed: measured("leash.glazed").optional(),
    own: own(),
  }),
);

/** The schema of a rig document. Its input type is the document, its output the same in SI units. */
export const rigSchema = once(() =>
  z
    .strictObject({
      [RIG_TAG]: z
        .literal(RIG_FORMAT)
        .meta({ title: "Format", description: "Marks the file as a rig of this format." }),
      id: rigId().optional(),
      name: text("name").min(1),
      notes: text("notes").optional(),
      invented: flag("invented").optional(),
      span: measured("span"),
      rise: measured("rise").optional(),
      latitude: choice<Latitude>("latitude").optional(),
      requiredFactor: bare("requiredFactor").optional(),
      requiredAfterFailure: bare("requiredAfterFailure").optional(),
      requiredClearance: measured("requiredClearance").optional(),
      requiredFactorBasis: basis("requiredFactorBasis").optional(),
      unconfirmed: z.array(text("unconfirmed[]").min(1)).max(1000).optional(),
      stocks: z.array(stock()).max(100).optional(),
      anchorA: anchor("anchorA"),
      anchorB: anchor("anchorB"),
      main: z.strictObject({
        pretension: measured("main.pretension"),
        sections: sections(),
        endA: lineEnd(),
        endB: lineEnd(),
      }),
      backup: backup().optional(),
      rings: z.array(ring()).min(1).max(4),
      leash: leash(),
      harness: z.strictObject({ ...rated("harness"), condition: condition(), own: own() }),
      walker: z.strictObject({
        mass: measured("walker.mass"),
        rescuer: measured("walker.rescuer").optional(),
        tieIn: measured("walker.tieIn").optional(),
        lateral: measured("walker.lateral").optional(),
        at: position("walker.at").optional(),
      }),
      ground: z
        .array(z.tuple([measured("ground[][0]"), measured("ground[][1]")]))
        .min(2)
        .max(2000),
    })
    .meta({ title: "Rig", description: "A highline rig as a rigger writes it down, with units in the values." }),
);

/** A rig as written: every value as typed. */
export type RigDocument = z.input<ReturnType<typeof rigSchema>>;
/** The same with every quantity in SI units, defaults not yet filled in. */
export type ReadDocument = z.output<ReturnType<typeof rigSchema>>;
