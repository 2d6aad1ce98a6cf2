/**
 * What is asked of somebody who begins a rig: eight questions, each with a few answers. An answer is text as it is typed; one that
 * is not given is taken over from the template, and stays marked until somebody confirms it.
 */
import { sayNewRig } from "@secondline/words/newRig";
import * as z from "zod";

interface AsField {
  readonly kind: "field";
  /** Field of the rig document by which it is read and described. */
  readonly field: string;
}
interface AsOwn {
  readonly kind: "depth" | "spot" | "shape" | "yesNo" | "points" | "places" | "age";
}
export type NewRigAnswer = (AsField | AsOwn) & {
  /** Value of the template, as it would be typed; empty: the template says nothing, and the worst counts. */
  readonly start: string;
  /** Values of the rig that this answer confirms. A value that several answers name is confirmed only by all these answers together. */
  readonly confirms: readonly string[];
};

const field = (path: string, start: string, confirms: readonly string[] = [path]): NewRigAnswer => ({
  kind: "field",
  field: path,
  start,
  confirms,
});
const own = (kind: AsOwn["kind"], start: string, confirms: readonly string[] = []): NewRigAnswer => ({
  kind,
  start,
  confirms,
});

const anchor = (at: "anchorA" | "anchorB") =>
  [
    own("points", "2", [`${at}.points[].kind`]),
    field(`${at}.points[].kind`, "bolt"),
    field(`${at}.points[].strength`, "25 kN"),
    field(`${at}.legAngle`, "45 deg"),
  ] as const;
const [pointsA, kindA, strengthA, legAngleA] = anchor("anchorA");
const [pointsB, kindB, strengthB, legAngleB] = anchor("anchorB");

/** What is said of a part that has never been used. */
const NEW_PART_ANSWERS = [
  "leash.falls",
  "leash.sheathSlip",
  "leash.glazed",
  "main.endA.clamped",
  "main.endB.clamped",
  "backup.endA.clamped",
  "backup.endB.clamped",
];

/** Every answer by its name. */
export const ANSWERS = {
  name: field("name", sayNewRig("name.rig"), []),
  span: field("span", "50 m"),
  rise: field("rise", "0 m"),
  // A profile made of one number is a guess between: only whoever has looked at it confirms it.
  lowest: own("depth", "25 m"),
  lowestAt: own("spot", "middle"),
  shape: own("shape", "slopes"),
  webbing: field("main.sections[].stock", "polyester-webbing-25"),
  tension: field("main.pretension", "2.5 kN"),
  backup: own("yesNo", "yes"),
  backupWebbing: field("backup.sections[].stock", "hmpe-webbing-25"),
  slack: field("backup.slack", "5 %"),
  connections: own("places", "every 15 m", ["backup.connections[].at"]),
  connectionStrength: field("backup.connections[].strength", "22 kN"),
  pointsA,
  kindA,
  strengthA,
  legAngleA,
  pointsB,
  kindB,
  strengthB,
  legAngleB,
  rope: field("leash.stock", "dynamic-rope-10"),
  leashLength: field("leash.length", "1.4 m"),
  knot: field("leash.knots[].kind", "figureEight"),
  mass: field("walker.mass", "80 kg"),
  age: own("age", "", NEW_PART_ANSWERS),
  outside: field("leash.condition.outside", "", []),
  sun: field("leash.condition.sun", "", []),
  latitude: field("latitude", ""),
} as const satisfies Readonly<Record<string, NewRigAnswer>>;
export type AnswerId = keyof typeof ANSWERS;
export const ANSWER_IDS = Object.keys(ANSWERS) as readonly AnswerId[];

/** The questions in the order in which they are asked, each with its answers. */
export const QUESTIONS = [
  { id: "site", answers: ["name", "span", "rise"] },
  { id: "ground", answers: ["lowest", "shape", "lowestAt"] },
  { id: "main", answers: ["webbing", "tension"] },
  { id: "backup", answers: ["backup", "backupWebbing", "slack", "connections", "connectionStrength"] },
  {
    id: "anchors",
    answers: ["pointsA", "kindA", "strengthA", "legAngleA", "pointsB", "kindB", "strengthB", "legAngleB"],
  },
  { id: "leash", answers: ["rope", "leashLength", "knot"] },
  { id: "walker", answers: ["mass"] },
  { id: "age", answers: ["age", "outside", "sun", "latitude"] },
] as const satisfies readonly { readonly id: string; readonly answers: readonly AnswerId[] }[];
export type QuestionId = (typeof QUESTIONS)[number]["id"];
const QUESTION_IDS = QUESTIONS.map(({ id }) => id) as [QuestionId, ...QuestionId[]];

const typed = z.string().min(1).max(200).optional();
const texts = Object.fromEntries(ANSWER_IDS.map((id) => [id, typed])) as Record<AnswerId, typeof typed>;

/** Answers as they are kept and as an answers file holds them: only what somebody said. */
export const answersSchema = z.strictObject({
  ...texts,
  /** The ground as pairs of distance from A and height, instead of its lowest point. */
  profile: z
    .array(z.tuple([z.string().max(60), z.string().max(60)]))
    .min(2)
    .max(2000)
    .optional(),
  /** Webbings and ropes of one's own, as the rig's file has them. */
  stocks: z
    .array(z.looseObject({ id: z.string() }))
    .max(100)
    .optional(),
  /** Answers that were moved by hand in the sketch, over a guess or the template: they are drawn, and not confirmed by that. */
  drawn: z.array(z.enum(["ground", "connections"])).optional(),
  /** Questions whose values of the template are right as they stand. */
  confirmed: z.array(z.enum(QUESTION_IDS)).optional(),
});
export type Answers = z.infer<typeof answersSchema>;

/** What stands for an answer: as given, else as in the template. */
export const answerOf = (answers: Answers, id: AnswerId): string => answers[id] ?? ANSWERS[id].start;

/** What says nothing beside other answers is not asked: legs of one point, webbing of no backup, the weather of something new. */
export function isAsked(id: AnswerId, answers: Answers): boolean {
  const of = (one: AnswerId) => answerOf(answers, one).trim().toLowerCase();
  switch (id) {
    case "lowest":
    case "shape":
      return answers.profile === undefined;
    case "lowestAt":
      return answers.profile === undefined && of("shape") !== "walls";
    case "legAngleA":
      return of("pointsA") !== "1";
    case "legAngleB":
      return of("pointsB") !== "1";
    case "backupWebbing":
    case "slack":
    case "connections":
      return of("backup") !== "no";
    case "connectionStrength":
      return of("backup") !== "no" && of("connections") !== "none";
    case "outside":
    case "sun":
      return of("age") !== "new";
    default:
      return true;
  }
}
