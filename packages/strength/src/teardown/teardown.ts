/** The plan of a teardown: which pieces to cut out of a line that comes down, and in which order to pull them. */
import type { LineStock, Rig } from "@secondline/rig";
import type { BreakTest } from "../breakLog/breakTest.ts";
import type { NotUsed } from "../retention/testState.ts";
import { applyWear } from "../wear/applyWear.ts";
import type { WearRecord } from "../wear/record.ts";
import { rigMatch } from "../wear/rigReference.ts";
import { wearState } from "../wear/wearState.ts";
import type { WearMark, WebbingState } from "../wear/webbingState.ts";
import { dosesOf, type ExpectedBand, expectedBand, FEW_DRAWS } from "./expectedBand.ts";
import { differentStocks, mattersMost, type Place, sameStock } from "./governing.ts";
import { FREE, GRIP, type NotToBeHad, type Sample } from "./sample.ts";
import { allSamples } from "./samples.ts";

export interface TeardownQuestion {
  readonly rig: Rig;
  readonly record: WearRecord;
  /** YYYY-MM-DD. */
  readonly on: string;
  /** Own break tests that are known already. */
  readonly tests?: readonly BreakTest[];
  /** Pulls that the user has; default 12. */
  readonly pulls?: number;
}

export const DEFAULT_PULLS = 12;

/** What a pull does to the band of the weakest place made of the same stock. */
export interface Teaches {
  /** Index into the plan's bands. */
  readonly band: number;
  /** Standard deviation of the logarithm before this piece and after, all earlier pieces pulled [-]. */
  readonly before: number;
  readonly after: number;
}

export interface Piece extends Sample {
  /** "P1", "P2" … in the order of pulling. */
  readonly id: string;
  /** Absent for what feeds no factor. */
  readonly teaches?: Teaches;
  /** Why no factor learns from it. */
  readonly alone?: NotUsed | "no stock";
}

/** The weakest place of a stock before and after all pulls. */
export interface TeardownBand {
  readonly stock: { readonly id: string; readonly name: string };
  readonly place: Place;
  readonly at?: number;
  readonly reason?: string;
  /** Now: central value, and what 19 of 20 hold [N]. */
  readonly strength: number;
  readonly strength5: number;
  /** Standard deviation of the logarithm, now and to be expected after all pulls [-]. */
  readonly before: number;
  readonly after: number;
  /** The factor that most of the scatter comes from: its share of it, its spread now and to be expected [-]. */
  readonly factor?: { readonly name: string; readonly share: number; readonly before: number; readonly after: number };
}

export interface TeardownWebbing {
  readonly id: string;
  readonly name: string;
  readonly mark: string;
  readonly line: "main" | "backup";
  readonly from: number;
  readonly to: number;
  readonly span: readonly [from: number, to: number];
  readonly marks: readonly { readonly kind: WearMark["kind"]; readonly from: number; readonly to: number }[];
}

export interface Teardown {
  readonly rig: string;
  readonly on: string;
  readonly invented: boolean;
  readonly pulls: number;
  /** Assumed lengths: of webbing in each grip, and between them [m]. */
  readonly grip: number;
  readonly free: number;
  readonly webbings: readonly TeardownWebbing[];
  /** In the order of pulling. */
  readonly pieces: readonly Piece[];
  readonly bands: readonly TeardownBand[];
  /** States for which the pulls do not suffice. */
  readonly leftOut: readonly Sample[];
  readonly cannot: readonly NotToBeHad[];
  /** Of the wear record. */
  readonly notes: readonly string[];
}

export interface TeardownIssue {
  readonly path: "wear";
  /** Webbings of the record that do not hang in the rig on that day. */
  readonly webbings: readonly {
    readonly name: string;
    /** Taken down out of this rig on that day, or moved. */
    readonly since?: string;
  }[];
}

export type TeardownReading =
  | { readonly ok: true; readonly teardown: Teardown }
  | { readonly ok: false; readonly issue: TeardownIssue };

/** The rig must be one that the record speaks of, and the day one that it covers: `assess` of the scenarios says so. */
export function planTeardown({
  rig,
  record,
  on,
  tests = [],
  pulls = DEFAULT_PULLS,
}: TeardownQuestion): TeardownReading {
  const worn = applyWear(rig, record, on);
  const hanging = worn.state.webbings.filter(hangsIn(rig));
  if (hanging.length === 0) return { ok: false, issue: notHanging(rig, record, on) };
  const { samples, cannot } = allSamples(worn.rig, hanging);
  const stocks = differentStocks(samples.flatMap(({ stock }) => stock ?? []));
  const bands = stocks.flatMap((stock): Group[] => {
    const own = samples.filter((sample) => sample.stock !== undefined && sameStock(sample.stock, stock));
    const band = expectedBand(worn.rig, stock, tests, own);
    return band === undefined ? [] : [{ stock, own: new Set(own), band, known: new Map() }];
  });
  const choice = new Choice(bands);
  const first = firstOfEveryState(samples);
  const kept = choice.within(first, pulls);
  const chosen = choice.more(kept, samples, pulls);
  const ordered = choice.ordered(chosen);
  return {
    ok: true,
    teardown: {
      rig: rig.name,
      on,
      invented: rig.invented || record.invented,
      pulls,
      grip: GRIP,
      free: FREE,
      webbings: hanging.map(drawn),
      pieces: choice.pieces(ordered),
      bands: bands.map((group) => bandOf(group, ordered)),
      leftOut: first.filter((sample) => !chosen.includes(sample)),
      cannot,
      notes: worn.notes,
    },
  };
}

function drawn({ id, name, mark, from, to, placement, marks }: WebbingState): TeardownWebbing {
  return {
    id,
    name,
    mark,
    line: placement!.line,
    from,
    to,
    span: [placement!.from, placement!.to],
    marks: marks.map(({ kind, from: a, to: b }) => ({ kind, from: Math.max(from, a), to: Math.min(to, b) })),
  };
}

const hangsIn =
  (rig: Rig) =>
  ({ placement }: WebbingState): boolean =>
    placement !== undefined && rigMatch(rig, placement.rig) !== undefined;

/** Why there is nothing to cut on a day: no webbing of the record hangs in the rig then. Undefined when one does. */
export function nothingHangs(rig: Rig, record: WearRecord, on: string): TeardownIssue | undefined {
  const { webbings } = wearState(record, on);
  return webbings.some(hangsIn(rig)) ? undefined : notHanging(rig, record, on);
}

function notHanging(rig: Rig, record: WearRecord, on: string): TeardownIssue {
  const webbings = record.webbings.map(({ name, entries }) => {
    const past = entries.filter(({ date }) => date.toString() <= on);
    const was = past.findLastIndex((entry) => "placement" in entry && rigMatch(rig, entry.placement.rig) !== undefined);
    const left =
      was < 0 ? undefined : past.slice(was + 1).find(({ event }) => event === "takenDown" || event === "moved");
    return { name, ...(left === undefined ? {} : { since: left.date.toString() }) };
  });
  return { path: "wear", webbings };
}

function firstOfEveryState(samples: readonly Sample[]): Sample[] {
  return [...new Map(samples.toReversed().map((sample) => [sample.state, sample])).values()].toReversed();
}

/** Samples of one stock, and what pulling some of them does. */
interface Group {
  readonly stock: LineStock;
  readonly own: ReadonlySet<Sample>;
  readonly band: ExpectedBand;
  /** Expected bands of sets that were asked for already. */
  readonly known: Map<string, number>;
}

/** A further piece that narrows the band by less is not worth a pull [-]. */
const WORTH_A_PULL = 0.002;
/** When nothing else tells two pieces apart; metal is pulled last. */
const PRIORITY = [
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

/** The main line carries the walker all the time: its band counts so many times as much as that of another stock [-]. */
const MAIN_WEIGHT = 2;

/** Greedy choice: each step takes the piece that narrows the bands most. */
class Choice {
  private readonly groups: readonly Group[];
  private readonly numbers = new Map<Sample, number>();

  constructor(groups: readonly Group[]) {
    this.groups = groups;
  }

  /** Of these the ones to keep when there are more than pulls: what is needed first, then what narrows most. */
  within(samples: readonly Sample[], pulls: number): readonly Sample[] {
    const left = [...samples].sort((a, b) => rank(a) - rank(b) || dose(b) - dose(a));
    if (left.length <= pulls) return left;
    const kept: Sample[] = [];
    for (const need of [2, 1, 0]) {
      const next = left.filter((sample) => needOf(sample) === need);
      while (next.length > 0 && kept.length < pulls) {
        const most = this.best(kept, next)!.gain;
        // Of those that narrow about as much the first in the list goes: the worst fall zone before a new knot.
        const at = next.findIndex((sample) => this.gain(kept, sample) >= most - WORTH_A_PULL);
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
      if (best === undefined || best.gain < WORTH_A_PULL) break;
      chosen = [...chosen, best.sample];
    }
    return chosen;
  }

  /** The most telling first, behind a new piece: that tries the machine and its grips. */
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
    const weight = group.band.now.place.part === "main" ? MAIN_WEIGHT : 1;
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
 * What is kept when pulls are few: first the main line's new piece and its webbing with sun alone, against which all other states are
 * told apart; last the pieces from which no factor learns.
 */
function needOf(sample: Sample): number {
  if (typeof dosesOf(sample) === "string") return 0;
  return sample.part === "main" && (sample.kind === "new" || sample.kind === "sunOnly") ? 2 : 1;
}

/** Falls or months in the clamp, to put the worst of a kind first [-]. */
const dose = ({ row }: Sample): number => Number(row.clamped_months || row.falls || 0);

const rank = ({ kind }: Sample): number => PRIORITY.indexOf(kind);

function bandOf({ stock, band, own }: Group, ordered: readonly Sample[]): TeardownBand {
  const pulled = ordered.filter((sample) => own.has(sample));
  const { now } = band;
  const most = mattersMost(now);
  const factor =
    most === undefined
      ? {}
      : {
          factor: {
            name: most.factor.name,
            share: most.share,
            before: most.factor.spread,
            after: band.factorAfter(pulled, most.factor.name) ?? most.factor.spread,
          },
        };
  return {
    stock: { id: stock.id, name: stock.name },
    place: now.place,
    ...(now.at === undefined ? {} : { at: now.at }),
    ...(now.reason === undefined ? {} : { reason: now.reason }),
    strength: now.strength,
    strength5: now.strength5,
    before: now.sigmaLog,
    after: band.after(pulled),
    ...factor,
  };
}
