/** A question as somebody asks it on the page or elsewhere, read: every fault at once, each at its place. */
import { type Dimension, type FactValue, parseQuantity, type Rig } from "@secondline/rig";
import {
  type Assessed,
  type Knob,
  type KnobFault,
  type KnownBesides,
  type PointsQuestion,
  readKnob,
  rigStrengths,
  type SweepOptions,
  type SweepWhat,
  sweepRuns,
  whatIfSet,
} from "@secondline/scenarios";
import { type Foretold, foretold } from "../foretold.ts";
import type { SweepNumber } from "./numbers.ts";

/** As typed. */
export interface AskedRange {
  readonly name: string;
  readonly from: string;
  readonly to: string;
}
export interface HowFarAsked {
  /** One range makes a curve, two make a map. */
  readonly ranges: readonly AskedRange[];
  readonly what: SweepWhat;
  /** How many values; empty: the usual number. */
  readonly points: string;
  /** A limit of one's own; empty: none. */
  readonly limit: string;
  readonly effort: "quick" | "full";
}

export interface HowFarQuestion {
  readonly points: PointsQuestion;
  readonly options: SweepOptions;
}

export type HowFarPlace = "first" | "second" | "points" | "limit";
/** What is wrong, as a fact; of a range with an example of one. */
export type HowFarInputFault =
  | (KnobFault & { readonly example: string })
  | { readonly kind: "points" | "pointsOfCounted"; readonly least: number; readonly most: number }
  | { readonly kind: "limit"; readonly about: FactValue }
  | { readonly kind: "same" }
  | { readonly kind: "limitNumber" };

export type HowFarReading =
  | { readonly ok: true; readonly question: HowFarQuestion }
  | {
      readonly ok: false;
      readonly faults: readonly { readonly place: HowFarPlace; readonly fault: HowFarInputFault }[];
    };

/** What a question is read against. */
export interface HowFarContext {
  readonly document: unknown;
  readonly rig: Rig;
  readonly known: KnownBesides;
}

/** Values along one number, and along each of two [-]. */
export const POINT_COUNTS = {
  one: { quick: 7, full: 13, least: 3, most: 41 },
  two: { quick: 4, full: 6, least: 3, most: 13 },
} as const;
/** What is counted is run at every number, up to so many [-]. */
const MOST_COUNTED = 13;

export function readHowFar(asked: HowFarAsked, context: HowFarContext): HowFarReading {
  const faults: { place: HowFarPlace; fault: HowFarInputFault }[] = [];
  const knobs = asked.ranges.flatMap((range, i): readonly Knob[] => {
    const found = readRange(range, context);
    if (!("fault" in found)) return [found];
    faults.push({ place: i === 0 ? "first" : "second", fault: found.fault });
    return [];
  });
  const [first, second] = asked.ranges;
  if (first && second && first.name === second.name) faults.push({ place: "second", fault: { kind: "same" } });
  const counts = readCounts(asked, knobs);
  if ("fault" in counts) faults.push({ place: "points", fault: counts.fault });
  const limit = readLimit(asked.limit, asked.what);
  if (typeof limit === "object") faults.push({ place: "limit", fault: limit });
  if (faults.length > 0 || "fault" in counts || typeof limit === "object") return { ok: false, faults };
  const { what, effort } = asked;
  const { document, known } = context;
  return {
    ok: true,
    question: {
      points: { document, known, knobs, counts: counts.counts },
      options: {
        what,
        size: effort,
        accuracy: effort === "quick" ? "quick" : "standard",
        ...(limit === undefined ? {} : { limit }),
      },
    },
  };
}

function readRange({ name, from, to }: AskedRange, { rig, document, known }: HowFarContext) {
  const found = readKnob(`${name}=${from.trim()}..${to.trim()}`, { rig, document, dated: known.on !== undefined });
  if (found.ok) return found.knob;
  const isToBlank = to.trim() === "" && from.trim() !== "";
  return {
    fault: {
      ...found.fault,
      ...(isToBlank ? { end: "to" as const } : {}),
      example: name === "connections" || name === "months" ? "0 to 5" : `${from || "2"} to ${to || "14"}`,
    },
  };
}

type Counts = { readonly counts: readonly number[] } | { readonly fault: HowFarInputFault };

function readCounts({ points, effort, ranges }: HowFarAsked, knobs: readonly Knob[]): Counts {
  const { least, most, ...usual } = ranges.length > 1 ? POINT_COUNTS.two : POINT_COUNTS.one;
  const text = points.trim();
  const asked = text === "" ? undefined : /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (asked !== undefined && !(asked >= least && asked <= most)) return { fault: { kind: "points", least, most } };
  return {
    counts: knobs.map(({ whole, from, to }) => {
      const all = to - from + 1;
      if (whole && all <= (asked ?? MOST_COUNTED)) return Math.max(2, all);
      return asked ?? usual[effort];
    }),
  };
}

function readLimit(
  text: string,
  { kind }: SweepWhat,
): number | undefined | Extract<HowFarInputFault, { kind: "limit" | "limitNumber" }> {
  if (text.trim() === "") return undefined;
  if (kind === "margin") {
    const value = /^\d*\.?\d+$/.test(text.trim()) ? Number(text) : Number.NaN;
    return value > 0 ? value : { kind: "limitNumber" };
  }
  const read = parseQuantity(text, limitDimension(kind));
  return read.ok ? read.value : { kind: "limit", about: read.message };
}

export const limitDimension = (kind: Exclude<SweepWhat["kind"], "margin">): Dimension =>
  kind === "load" ? "force" : "length";

/** How long it will take, about, with so many jobs at a time; runs that are kept from before make it less. */
export function foretoldSweep(
  { points: { knobs, counts }, options }: HowFarQuestion,
  assessed: Assessed,
  jobs: number,
): Foretold {
  const { rig, tests } = assessed;
  const strengths = rigStrengths(rig, tests);
  const events = whatIfSet({ rig, weakPlaces: strengths.weakPlaces, size: options.size ?? "full" });
  const rigs = counts.reduce((all, count, k) => (knobs[k]!.kind === "months" ? all : all * count), 1);
  const runs = sweepRuns({ events: events.length, knobs: knobs.length, rigs });
  return foretold({ assessed, events, runs, accuracy: options.accuracy, jobs, strengths });
}

/** The number that a question begins with: one that is asked about most, with its range. */
export const firstAsked = (numbers: readonly SweepNumber[]): HowFarAsked => ({
  ranges: numbers.slice(0, 1).map(({ name, from, to }) => ({ name, from, to })),
  what: { kind: "margin" },
  points: "",
  limit: "",
  effort: "quick",
});
