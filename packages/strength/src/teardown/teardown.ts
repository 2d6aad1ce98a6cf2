/** The plan of a teardown: which pieces to cut out of a line that comes down, and in which order to pull them. */

import type { Rig } from "@secondline/rig";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { testsUntil } from "../breakLog/untilDay.ts";
import { date } from "../dates/calendarDate.ts";
import type { NoteFact } from "../noteFacts.ts";
import type { NotUsed } from "../retention/testState.ts";
import { applyWear } from "../wear/applyWear.ts";
import type { WearRecord } from "../wear/record.ts";
import { rigMatch } from "../wear/rigReference.ts";
import { wearState } from "../wear/wearState.ts";
import type { WearMark, WebbingState } from "../wear/webbingState.ts";
import { firstOfEveryState, type Group, PieceChoice } from "./choice.ts";
import { expectedBand } from "./expectedBand.ts";
import { differentStocks, mattersMost, type RigPlace, sameStock } from "./governing.ts";
import { leastSun } from "./leastSun.ts";
import { FREE_LENGTH, GRIP_LENGTH, type NotToBeHad, type Sample } from "./sample.ts";
import { allSamples } from "./samples.ts";
import type { FoundSamples } from "./webbingSamples.ts";

export interface TeardownQuestion {
  readonly rig: Rig;
  readonly record: WearRecord;
  /** YYYY-MM-DD. */
  readonly on: string;
  /** Own break tests that are known already; those dated after `on` count for nothing. */
  readonly tests?: readonly BreakTest[];
  /** Pulls that the user has; default 12. */
  readonly pulls?: number;
}

export const DEFAULT_PULLS = 12;

/** Effect of a pull on the band of the weakest place made of the same stock. */
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
  /** Absent for a piece that feeds no factor. */
  readonly teaches?: Teaches;
  /** Why no factor learns from it. */
  readonly alone?: NotUsed | "no stock";
}

/** The weakest place of a stock before and after all pulls. */
export interface TeardownBand {
  readonly stock: { readonly id: string; readonly name: string };
  readonly place: RigPlace;
  readonly at?: number;
  readonly reason?: string;
  /** Now: central value, and the strength that 19 of 20 reach [N]. */
  readonly strength: number;
  readonly strength5: number;
  /** Standard deviation of the logarithm, now and to be expected after all pulls [-]. */
  readonly before: number;
  readonly after: number;
  /**
   * The factor from which most of the scatter comes: its share of the variance, its spread now and the spread to be
   * expected [-].
   */
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
  /** Notes of the wear record. */
  readonly notes: readonly NoteFact[];
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

/** The record must name the rig and cover the day; `assess` of the scenarios checks both. */
export function planTeardown({
  rig,
  record,
  on,
  tests = [],
  pulls = DEFAULT_PULLS,
}: TeardownQuestion): TeardownReading {
  const known = testsUntil(tests, on).counted;
  const worn = applyWear(rig, record, on);
  const hanging = worn.state.webbings.filter(hangsIn(rig));
  if (hanging.length === 0) return { ok: false, issue: notHanging(rig, record, on) };
  const { samples, cannot } = samplesOn(rig, record, on);
  const stocks = differentStocks(samples.flatMap(({ stock }) => stock ?? []));
  const bands = stocks.flatMap((stock): Group[] => {
    const own = samples.filter((sample) => sample.stock !== undefined && sameStock(sample.stock, stock));
    const band = expectedBand(worn.rig, stock, known, own);
    return band === undefined ? [] : [{ stock, own: new Set(own), band, known: new Map() }];
  });
  const choice = new PieceChoice(bands);
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
      grip: GRIP_LENGTH,
      free: FREE_LENGTH,
      webbings: hanging.map(drawn),
      pieces: choice.pieces(ordered),
      bands: bands.map((group) => bandOf(group, ordered)),
      leftOut: first.filter((sample) => !chosen.includes(sample)),
      cannot,
      notes: worn.notes,
    },
  };
}

/** All samples of the rig on a day; their rows tell the least sun that they can have taken. */
export function samplesOn(rig: Rig, record: WearRecord, on: string): FoundSamples {
  const least = leastSun(rig, record, date(on));
  const worn = applyWear(least.rig, least.record, on);
  return allSamples(worn.rig, worn.state.webbings.filter(hangsIn(rig)));
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

/** The reason why there is nothing to cut on a day: no webbing of the record hangs in the rig then. Undefined if one does. */
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
