/** Which value of a sweep is worth a check of the whole rig: the last one at which the limit is kept with its whole band. */
import { isTurned, type Knob, type SweepLimit, type Swept, type SweptPoint, withValue } from "@secondline/scenarios";

export interface Candidate {
  /** In the knob's unit, rounded into the kept side. */
  readonly value: number;
  /** The most, or the least, that keeps the limit. */
  readonly edge: "most" | "least";
  /** No crossing lies there: the range ends. */
  readonly rangeEnds: boolean;
}

/** Told apart in a range; two digits more than that are noise [-]. */
const RANGE_STEPS = 200;

/**
 * The most and the least of one knob that keep the last limit with the whole 95 % band; none where no value surely does. A candidate
 * is no verdict: only a whole search of the rig with that value can say that it holds.
 */
export function candidatesOf({ knobs, limits, points, what }: Swept): readonly Candidate[] {
  const [knob, another] = knobs;
  const found = limits.at(-1);
  if (!knob || another || !found) return [];
  const surely = (point: SweptPoint | undefined) => keepsSurely(what.kind, found.limit, point);
  const ends = [
    ...(surely(points.at(-1)) ? [{ value: knob.to, edge: "most", rangeEnds: true } as const] : []),
    ...(surely(points[0]) ? [{ value: knob.from, edge: "least", rangeEnds: true } as const] : []),
  ];
  const last = found.crossings.at(-1);
  const [first] = found.crossings;
  return [
    ...(last?.kept === "below" && last.low !== undefined ? [candidate(knob, last.low, "most")] : []),
    ...(first?.kept === "above" && first.high !== undefined ? [candidate(knob, first.high, "least")] : []),
    ...ends,
  ].filter(({ value }) => value >= knob.from && value <= knob.to);
}

/** The whole band lies on the kept side. */
function keepsSurely(kind: Swept["what"]["kind"], { value }: SweepLimit, point: SweptPoint | undefined): boolean {
  if (!point?.curve) return false;
  return isTurned({ kind }) ? point.curve.low >= value : point.curve.high <= value;
}

function candidate(knob: Knob, value: number, edge: Candidate["edge"]): Candidate {
  const decimals = knob.whole
    ? 0
    : Math.max(0, Math.min(6, Math.ceil(-Math.log10((knob.to - knob.from) / RANGE_STEPS))));
  const scale = 10 ** decimals;
  // A hair is forgiven: 0.3 ÷ 0.1 is no 3.
  const steps = edge === "most" ? Math.floor(value * scale + 1e-9) : Math.ceil(value * scale - 1e-9);
  return { value: steps / scale, edge, rangeEnds: false };
}

/** The rig's document with values of the knobs in it; months change nothing that is written. */
export const documentAt = (document: unknown, knobs: readonly Knob[], values: readonly number[]): unknown =>
  knobs.reduce((done, knob, k) => withValue(done, knob, values[k]!), document);
