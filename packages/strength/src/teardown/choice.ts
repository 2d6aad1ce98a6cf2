/** Greedy choice among samples: which to pull when pulls are few, which twice when there are more, and in which order. */
import type { LineStock } from "@secondline/rig";
import { dosesOf, type ExpectedBand, FEW_DRAWS } from "./expectedBand.ts";
import type { Sample } from "./sample.ts";
import type { Piece } from "./teardown.ts";

export function firstOfEveryState(samples: readonly Sample[]): Sample[] {
  return [...new Map(samples.toReversed().map((sample) => [sample.state, sample])).values()].toReversed();
}

/** Samples of one stock, and the effect of pulling some of them. */
export interface Group {
  readonly stock: LineStock;
  readonly own: ReadonlySet<Sample>;
  readonly band: ExpectedBand;
  /** Expected bands of sets that were asked for already. */
  readonly known: Map<string, number>;
}

/** A further piece that narrows the band by less is not worth a pull [-]. */
const LEAST_NARROWING = 0.002;
/** Order of pieces that nothing else tells apart; metal is pulled last. */
const KIND_PRIORITY = [
  "new",
  "sunOnly",
  "fallZone",
  "clampMark",
  "sewnJoin",
  "join",
  "sewnLoop",
  "knot",
  "leash",
  "leashPlain",
  "newKnot",
  "damage",
  "hardware",
  "connection",
  "ring",
];

/** Weight of the main line's band against that of another stock: the main line carries the walker all the time [-]. */
const MAIN_LINE_WEIGHT = 2;

/** Greedy choice: each step takes the piece that narrows the bands most. */
export class PieceChoice {
  private readonly groups: readonly Group[];
  private readonly numbers = new Map<Sample, number>();

  constructor(groups: readonly Group[]) {
    this.groups = groups;
  }

  /** The samples to keep when there are more than pulls: the needed ones first, then those that narrow most. */
  within(samples: readonly Sample[], pulls: number): readonly Sample[] {
    const left = [...samples].sort((a, b) => rank(a) - rank(b) || dose(b) - dose(a));
    if (left.length <= pulls) return left;
    const kept: Sample[] = [];
    for (const need of [2, 1, 0]) {
      const next = left.filter((sample) => needOf(sample) === need);
      while (next.length > 0 && kept.length < pulls) {
        const most = this.best(kept, next)!.gain;
        // Among samples that narrow about as much, the first in the list is taken: the worst fall zone before a new knot.
        const at = next.findIndex((sample) => this.gain(kept, sample) >= most - LEAST_NARROWING);
        kept.push(...next.splice(at, 1));
      }
    }
    return kept;
  }

  /** Adds pieces for as long as there are pulls, and pieces that are worth one. */
  more(kept: readonly Sample[], samples: readonly Sample[], pulls: number): readonly Sample[] {
    let chosen = [...kept];
    const states = new Set(kept.map(({ state }) => state));
    while (chosen.length < pulls) {
      const next = firstOfEveryState(samples.filter((one) => states.has(one.state) && !chosen.includes(one)));
      const best = this.best(chosen, next);
      if (best === undefined || best.gain < LEAST_NARROWING) break;
      chosen = [...chosen, best.sample];
    }
    return chosen;
  }

  /** The order of pulling: a new piece first, which tries the machine and its grips, then the most telling ones. */
  ordered(chosen: readonly Sample[]): readonly Sample[] {
    const left = [...chosen].sort((a, b) => rank(a) - rank(b));
    const done: Sample[] = [];
    const trial = left.findIndex(({ kind }) => kind === "new");
    if (trial >= 0) done.push(...left.splice(trial, 1));
    while (left.length > 0) {
      const telling = left.filter((sample) => needOf(sample) > 0);
      const { sample } = this.best(done, telling.length > 0 ? telling : left)!;
      done.push(...left.splice(left.indexOf(sample), 1));
    }
    return done;
  }

  pieces(ordered: readonly Sample[]): Piece[] {
    const bandNow = new Map<Group, number>();
    return ordered.map((sample, i): Piece => {
      const id = `P${i + 1}`;
      const doses = dosesOf(sample);
      const band = this.groups.findIndex(({ own }) => own.has(sample));
      if (typeof doses === "string") return { ...sample, id, alone: doses };
      if (band < 0) return { ...sample, id };
      const group = this.groups[band]!;
      const pulled = ordered.slice(0, i + 1).filter((one) => group.own.has(one));
      const before = bandNow.get(group) ?? group.band.now.sigmaLog;
      const after = group.band.after(pulled);
      bandNow.set(group, after);
      return { ...sample, id, teaches: { band, before, after } };
    });
  }

  private best(chosen: readonly Sample[], next: readonly Sample[]) {
    const gains = next.map((sample) => ({ sample, gain: this.gain(chosen, sample) }));
    return gains.reduce<(typeof gains)[number] | undefined>(
      (most, one) => (most === undefined || one.gain > most.gain + 1e-12 ? one : most),
      undefined,
    );
  }

  /** By how much a further piece narrows the band of its stock, as a logarithm with the weight of its line [-]. */
  private gain(chosen: readonly Sample[], sample: Sample): number {
    const group = this.groups.find(({ own }) => own.has(sample));
    if (group === undefined || typeof dosesOf(sample) === "string") return 0;
    const weight = group.band.now.place.part === "main" ? MAIN_LINE_WEIGHT : 1;
    return weight * Math.log(this.after(group, chosen) / this.after(group, [...chosen, sample]));
  }

  private after(group: Group, chosen: readonly Sample[]): number {
    const own = chosen.filter((sample) => group.own.has(sample));
    const key = own
      .map((sample) => this.number(sample))
      .sort((a, b) => a - b)
      .join();
    const found = group.known.get(key) ?? group.band.after(own, FEW_DRAWS);
    group.known.set(key, found);
    return found;
  }

  private number(sample: Sample): number {
    const known = this.numbers.get(sample) ?? this.numbers.size;
    this.numbers.set(sample, known);
    return known;
  }
}

/**
 * How much a sample is needed when pulls are few. Most needed are the main line's new piece and its webbing with sun alone,
 * because all other states are compared with them. Least needed are pieces from which no factor learns.
 */
function needOf(sample: Sample): number {
  if (typeof dosesOf(sample) === "string") return 0;
  return sample.part === "main" && (sample.kind === "new" || sample.kind === "sunOnly") ? 2 : 1;
}

/** Falls, or months in the clamp: the worst sample of a kind comes first [-]. */
const dose = ({ row }: Sample): number => Number(row.clamped_months || row.falls || 0);

const rank = ({ kind }: Sample): number => KIND_PRIORITY.indexOf(kind);
