/** Where a curve meets a limit, with the interval of values at which its band does. */
import type { Worst } from "./envelope.ts";
import { isApart, type Knob } from "./knob.ts";
import type { CellState, Crossing, KnobRange, LimitFound, SweepLimit, SweepWhat } from "./sweepOutcome.ts";
import { toldLevel, toldOf } from "./tracks.ts";

type Curve = (value: number) => Worst | undefined;

/** Looked at so closely, then by halving [-]. */
const SEARCHED_CELLS = 240;
const HALVINGS = 40;

export interface CrossingQuestion {
  readonly what: SweepWhat;
  readonly knob: Knob;
  /** Values that points have. */
  readonly values: readonly number[];
  readonly curve: Curve;
  readonly limit: SweepLimit;
}

/** A limit turned from the value that is told into a number that is the worse the larger it is. */
export const rawLimit = (what: SweepWhat, { value }: SweepLimit): number => toldOf(what, value);

export function limitFound(question: CrossingQuestion): LimitFound {
  const { what, limit, knob, values, curve } = question;
  const raw = rawLimit(what, limit);
  const places = isApart(knob) ? values : cells(values);
  const known = places.flatMap((x) => {
    const level = curve(x);
    return level ? [{ x, level }] : [];
  });
  if (known.length === 0) return { limit, crossings: [] };
  const crossings = isApart(knob) ? apart(question, raw, known) : smooth(question, raw, known);
  if (crossings.length > 0) return { limit, crossings };
  const worst = known.reduce((a, b) => (b.level.value > a.level.value ? b : a)).level;
  const keeps = worst.value <= raw;
  const sure = known.every(({ level }) => (keeps ? level.high <= raw : level.low > raw));
  return { limit, crossings, throughout: { keeps, sure, worst: { ...toldLevel(what, worst), ...worst.governing } } };
}

export const stateOf = ({ low, high }: Worst, raw: number): CellState =>
  high <= raw ? "keeps" : low > raw ? "below" : "open";

/** Even cells over the range, with the values of the points: a curve that is lifted at a point has its worst there. */
function cells(values: readonly number[]): readonly number[] {
  const [from, to] = [Math.min(...values), Math.max(...values)];
  const even = Array.from({ length: SEARCHED_CELLS + 1 }, (_, i) => from + ((to - from) * i) / SEARCHED_CELLS);
  return [...new Set([...even, ...values])].sort((a, b) => a - b);
}

interface Place {
  readonly x: number;
  readonly level: Worst;
}

function smooth({ curve, limit }: CrossingQuestion, raw: number, known: readonly Place[]): readonly Crossing[] {
  const over = (of: (level: Worst) => number) => (x: number) => of(curve(x)!) > raw;
  const value = over((level) => level.value);
  return known.slice(1).flatMap((place, i): Crossing[] => {
    const before = known[i]!;
    const [a, b] = [before.level.value > raw, place.level.value > raw];
    if (a === b) return [];
    const at = between(value, before.x, place.x);
    // On the kept side the band is left where its high end keeps the limit, on the other where its low end does not.
    const leftSide = known.slice(0, i + 1).reverse();
    const rightSide = known.slice(i + 1);
    const low = bandEnd(leftSide, a, raw, over);
    const high = bandEnd(rightSide, b, raw, over);
    return [
      {
        limit,
        kept: a ? "above" : "below",
        at,
        ...(low === undefined ? {} : { low: Math.min(low, at) }),
        ...(high === undefined ? {} : { high: Math.max(high, at) }),
        governing: curve(at)!.governing,
      },
    ];
  });
}

/** Going away from a crossing: where the band has left the limit; undefined where it does not in the range. */
function bandEnd(
  side: readonly Place[],
  failing: boolean,
  raw: number,
  over: (of: (level: Worst) => number) => (x: number) => boolean,
): number | undefined {
  const left = side.findIndex(({ level }) => (failing ? level.low > raw : level.high <= raw));
  if (left < 0) return undefined;
  if (left === 0) return side[0]!.x;
  return between(
    over((level) => (failing ? level.low : level.high)),
    side[left - 1]!.x,
    side[left]!.x,
  );
}

/** Where `is` changes between true and false, found by halving. */
function between(is: (x: number) => boolean, from: number, to: number): number {
  const first = is(from);
  let [a, b] = [from, to];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (a + b) / 2;
    if (is(middle) === first) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** For a knob that is counted: the last value that keeps the limit, or the first. */
function apart({ limit }: CrossingQuestion, raw: number, known: readonly Place[]): readonly Crossing[] {
  return known.slice(1).flatMap((place, i): Crossing[] => {
    const before = known[i]!;
    const [a, b] = [before.level.value > raw, place.level.value > raw];
    if (a === b) return [];
    const kept = a ? known.slice(i + 1) : known.slice(0, i + 1).reverse();
    const failing = a ? known.slice(0, i + 1).reverse() : known.slice(i + 1);
    // The last of the failing side that may keep it as well, and the first of the kept side that surely does.
    const maybe = failing.findIndex(({ level }) => level.low > raw);
    const surely = kept.findIndex(({ level }) => level.high <= raw);
    const outer = maybe < 0 ? undefined : maybe === 0 ? kept[0]!.x : failing[maybe - 1]!.x;
    const inner = surely < 0 ? undefined : kept[surely]!.x;
    const [low, high] = a ? [outer, inner] : [inner, outer];
    return [
      {
        limit,
        kept: a ? "above" : "below",
        at: kept[0]!.x,
        ...(low === undefined ? {} : { low }),
        ...(high === undefined ? {} : { high }),
        governing: (a ? before : place).level.governing,
      },
    ];
  });
}

/** Stretches of values in which a curve keeps a limit, or the worse end of its band. */
export function keptStretches(
  { what, knob, values, curve, limit }: CrossingQuestion,
  by: "value" | "high" = "value",
): readonly KnobRange[] {
  const raw = rawLimit(what, limit);
  const places = isApart(knob) ? values : cells(values);
  const kept = places.map((x) => {
    const level = curve(x);
    return level !== undefined && level[by] <= raw;
  });
  const stretches: { from: number; to: number }[] = [];
  places.forEach((x, i) => {
    if (!kept[i]) return;
    const edge = (other: number) =>
      isApart(knob) || !curve(other) ? x : between((y) => (curve(y)?.[by] ?? Infinity) > raw, other, x);
    if (i === 0 || !kept[i - 1]) stretches.push({ from: i === 0 ? x : edge(places[i - 1]!), to: x });
    const last = stretches.at(-1)!;
    last.to = i + 1 < places.length && !kept[i + 1] ? edge(places[i + 1]!) : x;
  });
  return stretches;
}
