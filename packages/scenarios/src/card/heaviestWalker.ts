/**
 * The heaviest walker with whom a rig holds. It makes no run: it asks for a sweep of the walker's mass, takes where that meets what is
 * required on the safe side, and asks for a whole search there. What no whole search has said to hold is not told.
 */
import { FIELDS, type Rig, readRig } from "@secondline/rig";
import { type Assessed, type Assessment, assess } from "../assessment/assessment.ts";
import type { SearchOptions, SearchResult } from "../search/search.ts";
import type { Knob } from "../sweep/knob.ts";
import { withValue } from "../sweep/knob.ts";
import type { SweepOptions } from "../sweep/sweep.ts";
import type { Crossing, Swept } from "../sweep/sweepOutcome.ts";
import type { PointsQuestion } from "../sweep/sweepPoints.ts";

export interface HeaviestWalker {
  /** The walker's mass with everything worn [kg]. */
  readonly mass: number;
  /** The walker of the rig's file, or a heavier one for whom a whole search said that it holds. */
  readonly from: "asked" | "searched";
  /** Heavier ones were looked for. */
  readonly looked: boolean;
}

/** The heaviest walker, with the whole search that said so. */
export interface HeaviestFound {
  readonly walker: HeaviestWalker;
  /** The search with that walker and its result; the dates of the card are worked out from it. Absent: the walker is the file's. */
  readonly searched?: { readonly assessment: Assessment; readonly assessed: Assessed; readonly found: SearchResult };
}

export interface WalkerQuestion {
  /** The rig's document as it is written. */
  readonly document: unknown;
  readonly assessment: Assessment;
  readonly options: SearchOptions;
}

/** What is asked for next: the points of a sweep, or a whole search. */
export type WalkerStep =
  | { readonly kind: "sweep"; readonly question: PointsQuestion; readonly options: SweepOptions }
  | { readonly kind: "search"; readonly assessed: Assessed; readonly options: SearchOptions };

/** Undefined: nothing could be swept, or the search found no verdict. */
export type WalkerAnswer =
  | { readonly kind: "swept"; readonly swept: Swept | undefined }
  | { readonly kind: "found"; readonly found: SearchResult | undefined };

/** Masses are told in these steps [kg]. */
const MASS_STEP = 5;
/** Largest mass, as a multiple of that of the file's walker; the field's own limit holds too [-]. */
const MOST_MASS_RATIO = 1.5;
const MASS_POINTS = 5;
/** Whole searches at most: the first may find that the sweep said too much. */
const MOST_SEARCHES = 2;

/** For a rig that holds with the walker of its file. Yields the next step and takes its answer. */
export function* heaviestWalker(question: WalkerQuestion): Generator<WalkerStep, HeaviestFound, WalkerAnswer> {
  const { document, assessment, options } = question;
  const { rig, ...known } = assessment;
  const asked = rig.walker.mass;
  const knob = massKnob(rig);
  if (knob === undefined) return { walker: { mass: asked, from: "asked", looked: false } };
  const { accuracy, size } = options;
  const answer = yield {
    kind: "sweep",
    question: { document, known, knobs: [knob], counts: [MASS_POINTS] },
    options: { what: { kind: "margin" }, accuracy, ...(size ? { size } : {}) },
  };
  let mass = answer.kind === "swept" && answer.swept ? keptUpTo(answer.swept, knob) : asked;
  for (let i = 0; i < MOST_SEARCHES && mass > asked; i++) {
    const heavier = withWalker(document, assessment, knob, mass);
    if (heavier === undefined) break;
    const found = yield { kind: "search", assessed: heavier.assessed, options };
    if (found.kind === "found" && found.found?.outcome.verdict === "holds") {
      return { walker: { mass, from: "searched", looked: true }, searched: { ...heavier, found: found.found } };
    }
    mass = downTo((asked + mass) / 2);
  }
  return { walker: { mass: asked, from: "asked", looked: true } };
}

const downTo = (mass: number): number => MASS_STEP * Math.floor(mass / MASS_STEP);

/** Masses from the file's walker upwards; undefined if no heavier mass is possible. */
function massKnob({ walker }: Rig): Knob | undefined {
  const field = FIELDS["walker.mass"];
  const most = field?.kind === "quantity" ? field.limits[1] : walker.mass;
  const to = downTo(Math.min(MOST_MASS_RATIO * walker.mass, most));
  if (to <= walker.mass) return undefined;
  const path = "walker.mass";
  return { kind: "field", name: path, path, dimension: "mass", from: walker.mass, to, unit: "kg", whole: false };
}

/** The heaviest one up to whom every part surely keeps what is required, in whole steps [kg]. */
export function keptUpTo(swept: Pick<Swept, "limits">, { from, to }: Pick<Knob, "from" | "to">): number {
  const required = swept.limits.find(({ limit }) => limit.kind === "required");
  if (!required) return from;
  const [first] = [...required.crossings].sort((a, b) => a.at - b.at);
  if (first) return first.kept === "below" ? safely(first, from) : from;
  return required.throughout?.keeps && required.throughout.sure ? to : from;
}

/** Without a lower end of its interval nothing is sure above the first value. */
const safely = ({ low }: Crossing, from: number): number => (low === undefined ? from : Math.max(from, downTo(low)));

function withWalker(
  document: unknown,
  own: Assessment,
  knob: Knob,
  mass: number,
): { readonly assessment: Assessment; readonly assessed: Assessed } | undefined {
  const read = readRig(withValue(document, knob, mass));
  if (!read.ok) return undefined;
  const assessment = { ...own, rig: read.rig };
  const reading = assess(assessment);
  return reading.ok ? { assessment, assessed: reading.assessed } : undefined;
}
