/** Drives a search with results that are made up, for tests of what it decides: no run is made. */
import type { PartId } from "@secondline/rig";
import {
  type Assessed,
  assessRig,
  type GoodRun,
  type Outcome,
  type Rig,
  type RunOrder,
  type RunResult,
  rigStrengths,
  type SearchOptions,
  type SearchResult,
  search,
} from "../src/index.ts";
import { likelyFirst } from "../src/reliability/likelyFirst.ts";

/** Loads as shares of what 95 % of the parts reach, by part [-]; "person": the leash's pull [N]. */
export interface MadeUp {
  readonly share?: (part: PartId, order: RunOrder) => number;
  readonly pull?: (order: RunOrder) => number;
  readonly run?: (order: RunOrder) => Partial<GoodRun>;
  readonly trouble?: (order: RunOrder) => boolean;
  /** Works out which part goes first, as every real search does. It decides nothing, and takes as long as all the rest: default no. */
  readonly first?: boolean;
}

const nobodyFirst: typeof likelyFirst = (_rig, _strengths, { index }) => ({ whatIf: index, parts: [] });

const ELEMENTS = 24;

const known = new WeakMap<Rig, ReturnType<typeof rigStrengths>>();
function strengthsOf(rig: Rig): ReturnType<typeof rigStrengths> {
  const found = known.get(rig) ?? rigStrengths(rig);
  known.set(rig, found);
  return found;
}

export function madeUpRun(rig: Rig, order: RunOrder, { share = () => 0.1, pull = () => 3000, run }: MadeUp): GoodRun {
  const strengths = strengthsOf(rig);
  const load = (id: PartId) => share(id, order) * (strengths.parts.find((part) => part.id === id)?.strength5 ?? 0);
  const loads = Object.fromEntries(
    strengths.parts.filter((part) => !part.zones).map((part) => [part.id, load(part.id as PartId)]),
  );
  const webbing = (id: "main" | "backup") => ({
    at: Float32Array.from({ length: ELEMENTS }, (_, i) => (i + 0.5) / ELEMENTS),
    peak: new Float32Array(ELEMENTS).fill(load(id)),
  });
  return {
    ok: true,
    peaks: { leash: pull(order), mainA: 1, mainB: 1, backupA: 1, backupB: 1 },
    loads,
    anchors: { A: 1000, B: 1000 },
    webbing: { main: webbing("main"), backup: webbing("backup") },
    catchTime: 1,
    drop: 3,
    feetClearance: 20,
    clearance: 21,
    caughtBy: order.event.kind === "leashFall" ? "main" : "backup",
    gaveWay: [],
    ...run?.(order),
  };
}

/** The outcome of a search whose runs say what they are told to. */
export function searched(
  rig: Rig | Assessed,
  made: MadeUp = {},
  options: Partial<SearchOptions> = {},
  seen?: Outcome[],
  ordered: RunOrder[] = [],
): SearchResult {
  const assessed = "hash" in rig ? rig : assessRig(rig);
  const work = search(assessed, { accuracy: "standard", ...options }, made.first ? likelyFirst : nobodyFirst);
  let step = work.next();
  while (!step.done) {
    const { orders, soFar } = step.value;
    if (soFar) seen?.push(soFar());
    ordered.push(...orders);
    const results = orders.map(
      (order): RunResult =>
        made.trouble?.(order)
          ? { ok: false, trouble: { reason: "audit", detail: "12 J" } }
          : madeUpRun(assessed.rig, order, made),
    );
    step = work.next(results);
  }
  return step.value;
}
