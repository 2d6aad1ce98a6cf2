/** The six lessons: what is run, what is asked, and which number of the run answers it. */
import type { WhatIf } from "@secondline/scenarios";
import type { WrittenRig } from "../state/types.ts";
import { type LessonRun, partOf } from "./facts.ts";
import * as rigs from "./rigs.ts";
import type { WordKey } from "./words.ts";

export const LESSON_IDS = ["noBackup", "looseBackup", "connection", "knot", "trace", "shortStiff"] as const;
export type LessonId = (typeof LESSON_IDS)[number];

/** What a slider offers, in the unit that is shown. */
export interface Scale {
  readonly unit: "kmh" | "m" | "kN";
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** SI value of one unit. */
  readonly size: number;
}

export interface Lesson {
  readonly id: LessonId;
  /** What is given. */
  readonly before: WrittenRig;
  /** What is asked about. */
  readonly after: WrittenRig;
  readonly whatIf: WhatIf;
  readonly scale: Scale;
  /** The number asked for, of either run, in SI; undefined where the run does not have it. */
  readonly read: (run: LessonRun) => number | undefined;
  /** Further text for a result that may go either way. */
  readonly why?: (after: LessonRun) => WordKey;
}

const MAIN_FAILS: WhatIf = { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" };
const LEASH_FALL: WhatIf = { kind: "leashFall", at: 0.5 };
const metres = (to: number): Scale => ({ unit: "m", from: 0, to, step: 0.5, size: 1 });
const kilonewtons = (to: number): Scale => ({ unit: "kN", from: 0, to, step: 0.5, size: 1000 });
const drop = ({ outcome }: LessonRun) => outcome.drop;

export const LESSONS: readonly Lesson[] = [
  {
    id: "noBackup",
    before: rigs.PLAIN,
    after: rigs.WITHOUT_BACKUP,
    whatIf: MAIN_FAILS,
    scale: { unit: "kmh", from: 0, to: 160, step: 5, size: 1 / 3.6 },
    read: ({ outcome }) => outcome.groundSpeed,
  },
  { id: "looseBackup", before: rigs.PLAIN, after: rigs.LOOSE, whatIf: MAIN_FAILS, scale: metres(30), read: drop },
  { id: "connection", before: rigs.PLAIN, after: rigs.CONNECTED, whatIf: MAIN_FAILS, scale: metres(15), read: drop },
  {
    id: "knot",
    before: rigs.AGED_BACKUP,
    after: rigs.KNOTTED_BACKUP,
    whatIf: MAIN_FAILS,
    scale: kilonewtons(25),
    read: (run) => partOf(run, "backup.endA")?.strength,
    why: (after) => (partOf(after, "backup.endA")?.parts ? "knot.whyParts" : "knot.whyHolds"),
  },
  {
    id: "trace",
    before: rigs.OLD_LINE,
    after: rigs.MOVED_TRACE,
    whatIf: LEASH_FALL,
    scale: kilonewtons(30),
    read: (run) => partOf(run, "main")?.strength,
  },
  {
    id: "shortStiff",
    before: rigs.PLAIN,
    after: rigs.SHORT_STIFF,
    whatIf: LEASH_FALL,
    scale: { ...kilonewtons(12), step: 0.1 },
    read: ({ outcome }) => outcome.peaks?.leash,
  },
];
