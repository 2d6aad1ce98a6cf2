/** The lessons: what is run, what is asked, and which number of the run answers it. */
import type { WhatIf } from "@secondline/scenarios";
import type { WrittenRig } from "../documents/documents.ts";
import { crossingOf, type LessonRun, marginOf, partOutcomeOf, wayOut } from "./facts.ts";
import * as rigs from "./rigs.ts";
import type { WordKey } from "./words.ts";

export const LESSON_IDS = [
  "noBackup",
  "looseBackup",
  "connection",
  "knot",
  "clampMark",
  "shortStiff",
  "chance",
  "howFar",
] as const;
export type LessonId = (typeof LESSON_IDS)[number];
/** The open lesson, or the closing page after the last lesson. */
export type LessonPlace = LessonId | "closing";

/** What a slider offers, in the unit that is shown. */
export interface SliderScale {
  readonly unit: "kmh" | "m" | "kN" | "%";
  /** What its results are, which says to which side they are rounded. */
  readonly quantity: "speed" | "drop" | "load" | "strength" | "slack";
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** SI value of one unit. */
  readonly size: number;
}

/** A small sweep: `over` as the terminal takes it, `limit` of the drop [m]. */
export interface LessonSweep {
  readonly over: string;
  readonly points: number;
  readonly limit: number;
}

export interface Lesson {
  readonly id: LessonId;
  /** What is given. */
  readonly before: WrittenRig;
  /** What is asked about. */
  readonly after: WrittenRig;
  readonly whatIf: WhatIf;
  readonly scale: SliderScale;
  /** The number asked for, of either run, in SI; undefined where the run does not have it. */
  readonly read: (run: LessonRun) => number | undefined;
  /** Whether the two runs went as the lesson's texts say: where they did not, only what happened is told. */
  readonly went: (before: LessonRun, after: LessonRun) => boolean;
  /** Asked about so many of the same fall, each drawn by chance [-]. */
  readonly times?: number;
  /** Asked about a range of one number of the rig, and where the drop meets a limit. */
  readonly sweep?: LessonSweep;
  /** Strength and load along the main line stand under the picture. */
  readonly along?: true;
  /** Further text for a result that may go either way. */
  readonly why?: (after: LessonRun) => WordKey;
}

const MAIN_FAILS: WhatIf = { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" };
const LEASH_FALL: WhatIf = { kind: "leashFall", at: 0.5 };
const metres = (to: number): SliderScale => ({ unit: "m", quantity: "drop", from: 0, to, step: 0.5, size: 1 });
const kilonewtons = (quantity: "load" | "strength", to: number): SliderScale => ({
  unit: "kN",
  quantity,
  from: 0,
  to,
  step: 0.5,
  size: 1000,
});
const drop = ({ outcome }: LessonRun) => outcome.drop;
const pull = ({ outcome }: LessonRun) => outcome.peaks?.leash;
/** A quantity after over before [-]; no number if one of the runs does not have the quantity. */
const ratio = (read: Lesson["read"], before: LessonRun, after: LessonRun) =>
  (read(after) ?? Number.NaN) / (read(before) ?? Number.NaN);
const holdsIn = (id: "backup.endA" | "main") => (run: LessonRun) => marginOf(run, id)?.strength5;

const bothCaught = (before: LessonRun, after: LessonRun) => wayOut(before) === "caught" && wayOut(after) === "caught";

/** So many of thirty falls must give a number; else the lesson is not told [-]. */
const ENOUGH_FALLS = 25;

export const LESSONS: readonly Lesson[] = [
  {
    id: "noBackup",
    before: rigs.PLAIN,
    after: rigs.WITHOUT_BACKUP,
    whatIf: MAIN_FAILS,
    scale: { unit: "kmh", quantity: "speed", from: 0, to: 160, step: 5, size: 1 / 3.6 },
    read: ({ outcome }) => outcome.groundSpeed,
    went: (before, after) => wayOut(before) === "caught" && after.outcome.lostBecause === "ground",
  },
  {
    id: "looseBackup",
    before: rigs.PLAIN,
    after: rigs.LOOSE_BACKUP,
    whatIf: MAIN_FAILS,
    scale: metres(30),
    read: drop,
    went: (before, after) => {
      const more = ratio(drop, before, after);
      return bothCaught(before, after) && more > 1.2 && more < 3 && ratio(pull, before, after) > 1;
    },
  },
  {
    id: "connection",
    before: rigs.PLAIN,
    after: rigs.CONNECTED,
    whatIf: MAIN_FAILS,
    scale: metres(15),
    read: drop,
    went: (before, after) => bothCaught(before, after) && ratio(drop, before, after) < 0.75,
  },
  {
    id: "knot",
    before: rigs.AGED_BACKUP,
    after: rigs.KNOTTED_BACKUP,
    whatIf: MAIN_FAILS,
    scale: kilonewtons("strength", 25),
    read: holdsIn("backup.endA"),
    went: (before, after) =>
      wayOut(before) === "caught" &&
      partOutcomeOf(before, "backup.endA")?.verdict !== "fails" &&
      ratio(holdsIn("backup.endA"), before, after) < 0.5,
    why: (after) => {
      if (partOutcomeOf(after, "backup.endA")?.verdict !== "fails") return "knot.whyHolds";
      return wayOut(after) === "lost" ? "knot.whyParts" : "knot.whyFails";
    },
  },
  {
    id: "clampMark",
    before: rigs.OLD_LINE,
    after: rigs.MOVED_CLAMP_MARK,
    whatIf: LEASH_FALL,
    along: true,
    scale: kilonewtons("strength", 30),
    read: holdsIn("main"),
    went: (before, after) => {
      const [was, now] = [marginOf(before, "main"), marginOf(after, "main")];
      return (
        bothCaught(before, after) &&
        was !== undefined &&
        was.margin >= was.required &&
        now?.reason === "clamp mark" &&
        now.margin < now.required &&
        ratio(holdsIn("main"), before, after) < 0.8
      );
    },
  },
  {
    id: "shortStiff",
    before: rigs.PLAIN,
    after: rigs.SHORT_STIFF,
    whatIf: LEASH_FALL,
    scale: { ...kilonewtons("load", 12), step: 0.1 },
    read: pull,
    went: (before, after) =>
      bothCaught(before, after) && ratio(pull, before, after) > 1.1 && ratio(drop, before, after) < 1,
  },
  {
    id: "chance",
    before: rigs.PLAIN,
    after: rigs.PLAIN,
    whatIf: MAIN_FAILS,
    times: 30,
    scale: { ...kilonewtons("load", 15), step: 0.1 },
    read: ({ outcome, many }) => (many && many.length > 0 ? Math.max(...many) : outcome.peaks?.leash),
    went: (_, { many = [] }) => many.length >= ENOUGH_FALLS && Math.max(...many) > 1.05 * Math.min(...many),
  },
  {
    id: "howFar",
    before: rigs.PLAIN,
    after: rigs.PLAIN,
    whatIf: MAIN_FAILS,
    sweep: { over: "backup.slack=2%..14%", points: 7, limit: 15 },
    scale: { unit: "%", quantity: "slack", from: 2, to: 14, step: 0.5, size: 1 },
    // What is given is no slack to predict, but a drop.
    read: ({ swept }) => crossingOf(swept)?.at,
    went: (before, { swept }) => wayOut(before) === "caught" && crossingOf(swept)?.kept === "below",
  },
];
