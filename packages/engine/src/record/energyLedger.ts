/** The running account of energy: states at audit times, running totals of losses, and the check that they balance. */
import { type EnergyLedger, LEDGER, type LedgerEntry } from "./recording.ts";

const LOST_ENTRIES: readonly LedgerEntry[] = [
  "lossMain",
  "lossBackup",
  "lossLeash",
  "lossFriction",
  "lossContact",
  "lossDrag",
  "lossParting",
  "lossSlip",
];

/** Imbalance that a run may show, as a share of the energy moved [-]. Above it the run is an error, not a number. */
export const AUDIT_LIMIT = 0.01;

/**
 * Where hardly anything moves, rounding would be a large part of the imbalance, and the imbalance would say nothing. A hundredth of the walker's weight
 * over this way lifts the walker by a tenth of a millimetre, and is less than a thousandth of what a rigged line holds [m].
 */
const LEAST_MOVE = 0.01;

export class LedgerKeeper {
  /** Entry values of the present audit, by name. */
  readonly now: Record<LedgerEntry, number> = Object.fromEntries(LEDGER.map((name) => [name, 0])) as Record<
    LedgerEntry,
    number
  >;
  readonly #weight: number;
  readonly #times: number[] = [];
  readonly #rows: number[][] = [];
  #start = Number.NaN;
  #gain = 0;
  #imbalance = 0;
  #lowest = Number.POSITIVE_INFINITY;
  #highest = Number.NEGATIVE_INFINITY;
  #mostLost = 0;
  readonly #largestLoss = new Float64Array(LOST_ENTRIES.length);
  #created = 0;

  /** @param weight of the walker [N] */
  constructor(weight: number) {
    this.#weight = weight;
  }

  /** Books `now` at time t. */
  book(t: number): void {
    const { now } = this;
    const held =
      now.potential + now.kinetic + now.stretchMain + now.stretchBackup + now.stretchLeash + now.stretchOther;
    let lost = 0;
    for (let k = 0; k < LOST_ENTRIES.length; k++) lost += now[LOST_ENTRIES[k]!];
    if (this.#times.length === 0) this.#start = held;
    // The feet push the walker up while the line falls away: work from outside, not made by the numbers.
    this.#gain = Math.max(this.#gain, held - now.feet - this.#start);
    this.#imbalance = Math.max(this.#imbalance, Math.abs(held + lost - this.now.feet - this.#start));
    this.#lowest = Math.min(this.#lowest, this.now.potential);
    this.#highest = Math.max(this.#highest, this.now.potential);
    this.#mostLost = Math.max(this.#mostLost, lost);
    this.#watchCreation();
    this.#times.push(t);
    this.#rows.push(LEDGER.map((name) => this.now[name]));
  }

  /** No mechanism gives back what it took: a total that falls is energy made by the numbers. */
  #watchCreation(): void {
    for (let k = 0; k < LOST_ENTRIES.length; k++) {
      const now = this.now[LOST_ENTRIES[k]!];
      const most = Math.max(this.#largestLoss[k]!, now);
      this.#largestLoss[k] = most;
      this.#created = Math.max(this.#created, most - now);
    }
  }

  /** Largest fall of any mechanism's total loss below what it had been [J]. */
  get created(): number {
    return this.#created;
  }

  /**
   * Scale for the imbalance: the fall of potential energy and the stretch released, whatever of it was moved; at least what the
   * walker's weight does over LEAST_MOVE [J].
   */
  get moved(): number {
    return Math.max(this.#highest - this.#lowest, this.#mostLost, LEAST_MOVE * this.#weight);
  }
  get imbalance(): number {
    return this.#imbalance;
  }

  result(): EnergyLedger {
    const column = (k: number) => {
      const values = new Float32Array(this.#rows.length);
      for (let i = 0; i < values.length; i++) values[i] = this.#rows[i]![k]!;
      return values;
    };
    const series = Object.fromEntries(LEDGER.map((name, k) => [name, column(k)]));
    return {
      times: Float32Array.from(this.#times),
      series: series as Record<LedgerEntry, Float32Array>,
      gain: this.#gain,
      imbalance: this.#imbalance,
      created: this.#created,
      moved: this.moved,
    };
  }
}
