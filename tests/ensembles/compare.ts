/** Compares an ensemble of ours with the reference's: means, spreads, and what of a difference the reference itself does not explain. */
import { type Draw, type Ensemble, LOADS, QUANTITIES, type Quantity } from "./ensemble.ts";

/** A load below this share of the leash's mean says little about a catch and is left out [-]. */
const COUNTED = 0.8;
/** Spread of the reference from which on a load is chance, and only ranges can be compared [-]. */
const CHANCE = 0.15;
/** Spread of the drop above which it has two modes [-]. */
const TWO_MODES = 0.05;
/** Mean: at most so far off, and at most so far on the unsafe side, on top of the reference's own uncertainty [%]. */
const OFF = 5;
const BELOW = 4;
const DROP_OFF = 2;
/** Factor between the spreads [-]. */
export const SPREAD_FACTOR = 1.5;

export interface Comparison {
  readonly ensemble: string;
  readonly quantity: Quantity;
  readonly reference: number;
  readonly here: number;
  /** Difference of the means, two standard errors of both, and the reference's own uncertainty [%]. */
  readonly off: number;
  readonly chance: number;
  readonly uncertainty: number;
  /** Standard deviation over mean [%]. */
  readonly referenceSpread: number;
  readonly spread: number;
  /** Whether the quantity is chance in the reference: its place in the range is compared, not its mean. */
  readonly isChance: boolean;
  /** Smallest and largest single run, ours and the reference's. */
  readonly range: readonly [number, number];
  readonly referenceRange: readonly [number, number];
  /** Largest difference of the means that passes, on the side on which it lies [%]. */
  readonly allowed: number;
  readonly ok: boolean;
}

const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;
function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, x) => sum + (x - middle) * (x - middle), 0) / (values.length - 1));
}

const rangeOf = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const;

export function compare(ensemble: Ensemble, draws: readonly Draw[]): Comparison[] {
  const leash = mean(ensemble.runs.map(({ reference }) => reference.leash));
  return QUANTITIES.flatMap((quantity) => {
    const theirs = ensemble.runs.map(({ reference }) => reference[quantity]);
    const ours = draws.map((draw) => draw[quantity]);
    const reference = mean(theirs);
    const isLoad = (LOADS as readonly string[]).includes(quantity);
    if (isLoad && reference < COUNTED * leash) return [];
    const percent = (x: number) => (100 * x) / reference;
    const off = percent(mean(ours) - reference);
    const [s, t] = [deviation(theirs), deviation(ours)];
    const chance = percent(2 * Math.sqrt((s * s) / theirs.length + (t * t) / ours.length));
    const uncertainty = ensemble.uncertainty[quantity];
    const isChance = s > (isLoad ? CHANCE : TWO_MODES) * reference;
    const with_ = (bound: number) => Math.sqrt(bound * bound + uncertainty * uncertainty);
    const [range, referenceRange] = [rangeOf(ours), rangeOf(theirs)];
    const inRange = mean(ours) >= referenceRange[0] && mean(ours) <= referenceRange[1];
    const allowed = Math.max(chance, isLoad ? with_(off < 0 ? BELOW : OFF) : DROP_OFF);
    return [
      {
        ensemble: ensemble.name,
        quantity,
        reference,
        here: mean(ours),
        off,
        chance,
        uncertainty,
        referenceSpread: percent(s),
        spread: (100 * t) / mean(ours),
        isChance,
        range,
        referenceRange,
        allowed,
        ok: isChance ? inRange : Math.abs(off) <= allowed,
      },
    ];
  });
}

/** Root mean square of what the reference's own uncertainty does not explain of the loads' differences [%]. */
export function unexplained(comparisons: readonly Comparison[]): number {
  const loads = comparisons.filter(({ quantity, isChance }) => quantity !== "drop" && !isChance);
  return Math.sqrt(mean(loads.map(({ off, uncertainty }) => Math.max(0, off * off - uncertainty * uncertainty))));
}

export function table(comparisons: readonly Comparison[]): string {
  const cell = (x: number, digits = 1) => x.toFixed(digits).padStart(9);
  const head = `${"ensemble and quantity".padEnd(40)}${["reference", "here", "off %", "±2 s.e.", "u %", "spread", "here"].map((word) => word.padStart(9)).join("")}`;
  const rows = comparisons.map(
    (c) =>
      `${`${c.ensemble} ${c.quantity}`.padEnd(40)}${cell(c.reference, c.quantity === "drop" ? 3 : 0)}${cell(c.here, c.quantity === "drop" ? 3 : 0)}` +
      `${cell(c.off)}${cell(c.chance)}${cell(c.uncertainty)}${cell(c.referenceSpread)}${cell(c.spread)}${c.isChance ? "  chance" : ""}${c.ok ? "" : "  *"}`,
  );
  return [head, ...rows].join("\n");
}
