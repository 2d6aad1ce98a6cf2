/** The site card's facts: who may walk, until when, for how many falls, and everything for which it permits nobody. */
import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import { readDate, readWearRecord, type WearDocument } from "@secondline/strength";
import { beforeAll, describe, expect, it } from "vitest";
import {
  type Assessed,
  type Assessment,
  assess,
  type CardTerms,
  type Crossing,
  cardUntil,
  fallsLeft,
  heaviestWalker,
  keptUpTo,
  type LimitFound,
  MOST_FALLS_LEFT,
  type Outlook,
  rigOnLaterDays,
  type SearchResult,
  type Swept,
  siteCard,
  takeDownDates,
  type WalkerAnswer,
  type WalkerStep,
  withFalls,
} from "../src/index.ts";
import { searched } from "./madeUpRuns.ts";

const file = readFileSync(new URL("../../../demo-data/sound-rig.json", import.meta.url), "utf8");
const document = JSON.parse(file) as object;
const read = readRig(file);
if (!read.ok) throw new Error("the sound rig has faults");
const { rig } = read;
const ON = "2026-06-10";
const LOOKED = { event: "inspected", by: "Ada", found: "nothing", judgement: "sound" } as const;

type Webbings = NonNullable<WearDocument["webbings"]>;
const webbing = (line: "main" | "backup", from: string, to: string): Webbings[number] => ({
  id: line,
  name: line,
  length: "80 m",
  mark: "thread",
  made: "2025-11-01",
  firstUse: "2026-04-01",
  entries: [
    { date: "2026-04-01", event: "rigged", rig: "north-gap", line, markedEnd: "A", from, to, clampedAt: ["A", "B"] },
    { date: "2026-04-01", event: "wet", wet: false },
    ...(line === "main" ? [{ date: "2026-05-01", event: "falls", from: "20 m", to: "38 m", falls: 12 } as const] : []),
    { ...LOOKED, date: "2026-06-01" },
  ],
});
const RECORD: WearDocument = {
  secondline: "wear/1",
  name: "north gap",
  invented: true,
  webbings: [webbing("main", "3 m", "61 m"), webbing("backup", "2 m", "65 m")],
  plans: [{ rig: "north-gap", inspectEvery: "60 days" }],
};

function assessmentOf(change: (record: WearDocument) => WearDocument = (record) => record, own = rig): Assessment {
  const reading = readWearRecord(change(structuredClone(RECORD)));
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return { rig: own, wear: reading.record, on: ON };
}
function worked(assessment: Assessment): Assessed {
  const reading = assess(assessment);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.assessed;
}

/** Loads at which new webbing keeps a third more than is required. */
const LOAD = { share: () => 0.28 };
const assessment = assessmentOf();
const assessed = worked(assessment);
let found: SearchResult;
let outlook: Outlook;
const rigOn = rigOnLaterDays(assessment)!;
beforeAll(() => {
  found = searched(assessed, LOAD);
  outlook = takeDownDates({ on: ON, rigOn, events: found.demands, horizon: 120 });
});
const cardOf = (other: Assessed = assessed, falls: number | undefined = 9, from = found) =>
  siteCard({
    assessed: other,
    made: ON,
    outcome: from.outcome,
    outlook,
    ...(falls === undefined ? {} : { fallsLeft: falls }),
  });

describe("a site card", () => {
  it("of what holds by the whole search, is looked at and has been written down permits one walker", () => {
    expect(found.outcome.verdict).toBe("holds");
    expect(cardOf()).toMatchObject({
      permission: "given",
      refusals: [],
      lapses: [],
      on: ON,
      nextInspection: "2026-07-31",
      allows: {
        walker: { mass: 80, from: "asked", looked: false },
        until: { day: "2026-07-31", ends: "inspection" },
        falls: { left: 9, ends: "thin" },
      },
      hash: assessed.hash,
    });
    expect(cardOf().singles).toContain("leash");
    // Nobody wrote down that anybody looked at them.
    expect(cardOf().unfollowed).toContain("leash");
    expect(cardOf().unfollowed).not.toContain("main");
    expect(cardOf().unfollowed).not.toContain("endA");
    const followed = { ...assessed, upkeep: { ...assessed.upkeep, parts: ["leash"] } };
    expect(cardOf(followed).unfollowed).not.toContain("leash");
  });

  it("counts until the first of the inspection, the day before a part gets thin, and the last day looked at", () => {
    const { date: _, ...open } = outlook;
    const due = (date: string | undefined, horizon = "2026-08-30") =>
      cardUntil(assessed, { ...open, ...(date === undefined ? {} : { date }), horizon });
    expect(due("2026-06-21")).toEqual({ day: "2026-06-20", ends: "thin" });
    expect(due("2026-08-02")).toEqual({ day: "2026-07-31", ends: "inspection" });
    expect(due("2026-08-01")).toEqual({ day: "2026-07-31", ends: "inspection" });
    expect(due(undefined, "2026-07-01")).toEqual({ day: "2026-07-01", ends: "horizon" });
    expect(cardUntil(assessed, undefined)).toBeUndefined();
  });

  it("counts no further than to the day before the record says more: of a storm after its day it knows nothing", () => {
    const { date: _, ...open } = outlook;
    const later = (entry: object, of: "main" | "backup" = "main") =>
      worked(
        assessmentOf((record) => ({
          ...record,
          webbings: record.webbings!.map((one) =>
            one.id === of ? { ...one, entries: [...one.entries, entry as never] } : one,
          ),
        })),
      );
    const storm = later({ date: "2026-06-20", event: "storm" });
    expect(storm.upkeep).toMatchObject({ lapses: [], nextEntry: "2026-06-20" });
    expect(storm.hash).toBe(assessed.hash);
    expect(cardUntil(storm, open)).toEqual({ day: "2026-06-19", ends: "record" });
    expect(cardUntil(storm, { ...open, date: "2026-06-15" })).toEqual({ day: "2026-06-14", ends: "thin" });
    const due = later({ date: "2026-07-31", event: "falls", from: "20 m", to: "38 m", falls: 30 });
    expect(cardUntil(due, open)).toEqual({ day: "2026-07-30", ends: "record" });
    expect(cardUntil(later({ date: "2026-08-01", event: "storm" }, "backup"), open)!.ends).toBe("inspection");
  });

  it("permits a heavier walker for as long as the rig keeps with that one, never for longer than with the file's", () => {
    const walker = { mass: 95, from: "searched", looked: true } as const;
    const { date: _, ...open } = outlook;
    const withHeavier = (terms?: CardTerms) =>
      siteCard({
        assessed,
        made: ON,
        outcome: found.outcome,
        outlook,
        fallsLeft: 9,
        heavier: { walker, ...(terms ? { terms } : {}) },
      }).allows!;
    const own = { until: { day: "2026-07-31", ends: "inspection" }, falls: { left: 9, ends: "thin" } };
    const sooner = { ...open, date: "2026-06-21" };
    expect(withHeavier({ outlook: sooner, fallsLeft: 4 })).toEqual({
      walker,
      until: { day: "2026-06-20", ends: "thin" },
      falls: { left: 4, ends: "thin" },
      own: { mass: 80, ...own },
    });
    expect(withHeavier({ outlook, fallsLeft: 40 })).toEqual({ walker, ...own, own: { mass: 80, ...own } });
    // Whom nothing is known to be left for is not permitted.
    const asked = { walker: { mass: 80, from: "asked", looked: true }, ...own };
    expect(withHeavier()).toEqual(asked);
    expect(withHeavier({ outlook })).toEqual(asked);
    expect(withHeavier({ outlook, fallsLeft: 0 })).toEqual(asked);
    expect(withHeavier({ outlook: { ...open, date: ON }, fallsLeft: 4 })).toEqual(asked);
  });

  it("takes the fewer of the falls that parts take and those that are planned", () => {
    const planned = { ...assessed, upkeep: { ...assessed.upkeep, plannedFallsLeft: 4 } };
    expect(cardOf(planned).allows?.falls).toEqual({ left: 4, ends: "plan" });
    expect(cardOf(planned, 3).allows?.falls).toEqual({ left: 3, ends: "thin" });
    expect(cardOf(assessed, MOST_FALLS_LEFT).allows?.falls.ends).toBe("most");
  });

  const without = (change: (record: WearDocument) => WearDocument) => worked(assessmentOf(change));
  it.each([
    ["no plan of inspections", () => cardOf(without(({ plans: _, ...rest }) => rest)), "noInspection"],
    ["no wear record", () => cardOf(worked({ rig, on: ON })), "noRecord"],
    [
      "a value that nobody confirmed",
      () => cardOf({ ...assessed, rig: { ...rig, unconfirmed: ["span"] } }),
      "unconfirmed",
    ],
    [
      "a line of which the record says nothing",
      () => cardOf(without((record) => ({ ...record, webbings: record.webbings!.slice(0, 1) }))),
      "noLine",
    ],
    ["falls that nobody counted", () => siteCard({ assessed, made: ON, outcome: found.outcome, outlook }), "noFalls"],
    ["no date", () => siteCard({ assessed, made: ON, outcome: found.outcome, fallsLeft: 9 }), "noDate"],
    ["no fall left", () => cardOf(assessed, 0), "noFallLeft"],
    [
      "any verdict but that it holds",
      () => cardOf(assessed, 9, { ...found, outcome: { ...found.outcome, verdict: "open" } }),
      "verdict",
    ],
  ] as const)("permits nobody with %s", (_, made, kind) => {
    const card = made();
    expect(card.permission).toBe("none");
    expect(card.allows).toBeUndefined();
    expect(card.refusals.map((one) => one.kind)).toContain(kind);
  });

  it("permits nobody by an inspection, or anything else of its record, that is dated after the day on which it is made", () => {
    const made = (day: string) => siteCard({ assessed, made: day, outcome: found.outcome, outlook, fallsLeft: 9 });
    expect(assessed.upkeep.lastEntry).toBe("2026-06-01");
    expect(made("2026-05-31")).toMatchObject({
      permission: "none",
      refusals: [{ kind: "ahead", day: "2026-06-01" }],
    });
    // A card of a later day than today counts what was seen by today.
    for (const day of ["2026-06-01", ON, "2027-01-01"]) expect(made(day).permission).toBe("given");
  });

  it("has lapsed after whatever nobody has judged since, and permits nobody", () => {
    const storm = worked(
      assessmentOf((record) => {
        const [main, backup] = record.webbings!;
        const entries = [...main!.entries, { date: "2026-06-05", event: "storm" } as const];
        return { ...record, webbings: [{ ...main!, entries }, backup!] };
      }),
    );
    const card = cardOf(storm);
    expect(card).toMatchObject({ permission: "lapsed", lapses: [{ kind: "open" }] });
    expect(card.allows).toBeUndefined();
    expect(card.hash).toBe(found.outcome.hash);
    expect(storm.hash).not.toBe(assessed.hash);
  });
});

describe("falls left", () => {
  /** Those that were drawn are enough to say how many. */
  const few = () => found.demands.filter(({ runs }) => runs.length > 1).slice(0, 4);
  const strict: typeof rigOn = (day) => {
    const now = rigOn(day);
    return { ...now, requiredFactor: { ...now.requiredFactor, value: 9 }, requiredAfterFailure: 9 };
  };

  it("are as many as keep what is required on the last day, and fewer on a later one", () => {
    const ask = { on: ON, rigOn, events: few() };
    const falls = fallsLeft({ ...ask, until: "2026-07-31" })!;
    expect(falls).toBeGreaterThan(0);
    expect(falls).toBeLessThan(MOST_FALLS_LEFT);
    expect(fallsLeft({ ...ask, until: "2026-09-30" })!).toBeLessThanOrEqual(falls);
    expect(fallsLeft({ ...ask, until: "2026-07-31", rigOn: strict })).toBe(0);
  });

  it("are not known where nobody wrote down how many there were", () => {
    const events = found.demands;
    const unwritten = (day: ReturnType<typeof rigOn>) =>
      ({ ...day, leash: { ...day.leash, falls: undefined } }) as never;
    const ask = { on: ON, until: "2026-07-31", events };
    expect(fallsLeft({ ...ask, rigOn: (day) => unwritten(rigOn(day)) })).toBeUndefined();
    const noZone = (day: ReturnType<typeof rigOn>) => ({
      ...day,
      main: { ...day.main, sections: day.main.sections.map((section) => ({ ...section, wear: [] })) },
    });
    expect(fallsLeft({ ...ask, rigOn: (day) => noZone(rigOn(day)) })).toBeUndefined();
  });

  it("add to what has been held, everywhere on the main line and on the leash", () => {
    const now = rigOn(readDate(ON)!);
    const more = withFalls(now, 5);
    expect(more.leash.falls).toBe(now.leash.falls! + 5);
    const zones = more.main.sections[0]!.wear.flatMap((wear) => (wear.kind === "fallZone" ? [wear] : []));
    expect(zones.map(({ falls }) => falls)).toEqual([5, 17, 5]);
    expect(zones[0]!.from).toBe(0);
    for (const [i, zone] of zones.slice(1).entries()) expect(zone.from).toBe(zones[i]!.to);
  });
});

describe("the heaviest walker", () => {
  const limit = { kind: "required", value: 1 } as const;
  const knob = { from: 80, to: 120 };
  const crossing = (facts: Partial<Crossing>): LimitFound => ({
    limit,
    crossings: [{ limit, kept: "below", at: 101, low: 97.4, high: 104, governing: {} as never, ...facts }],
  });
  const through = (keeps: boolean, sure: boolean): LimitFound => ({
    limit,
    crossings: [],
    throughout: { keeps, sure, worst: {} as never },
  });
  it.each([
    ["the lower end of the crossing, in whole steps", crossing({}), 95],
    ["the file's own where that end reaches out of the range", crossing({ low: undefined } as never), 80],
    ["the file's own where it is below it", crossing({ low: 78 }), 80],
    ["the file's own where heavier ones are the better", crossing({ kept: "above" }), 80],
    ["the last of the range where all of it surely keeps the limit", through(true, true), 120],
    ["the file's own where that is not sure", through(true, false), 80],
    ["the file's own where none keeps it", through(false, true), 80],
  ])("is looked for at %s", (_, one, mass) => {
    expect(keptUpTo({ limits: [one] } as never, knob)).toBe(mass);
  });

  /** Verdicts by mass; `swept`: what the sweep would have looked at. */
  function driven(swept: LimitFound | undefined, holds: (mass: number) => boolean) {
    const asked: WalkerStep[] = [];
    const work = heaviestWalker({ document, assessment, options: { accuracy: "quick" } });
    let step = work.next();
    while (!step.done) {
      asked.push(step.value);
      const answer: WalkerAnswer =
        step.value.kind === "sweep"
          ? { kind: "swept", swept: swept && ({ limits: [swept] } as unknown as Swept) }
          : {
              kind: "found",
              found: {
                outcome: { verdict: holds(step.value.assessed.rig.walker.mass) ? "holds" : "thin" },
              } as never,
            };
      step = work.next(answer);
    }
    const searches = asked.flatMap((one) => (one.kind === "search" ? [one.assessed.rig.walker.mass] : []));
    return { ...step.value, searches, asked };
  }

  it("is told only where a whole search said that it holds", () => {
    expect(driven(crossing({}), (mass) => mass <= 95)).toMatchObject({
      walker: { mass: 95, from: "searched", looked: true },
      // What it found is handed on with the rig that it was found of.
      searched: { assessment: { rig: { walker: { mass: 95 } }, on: ON }, found: { outcome: { verdict: "holds" } } },
      searches: [95],
    });
    expect(driven(crossing({}), (mass) => mass <= 85)).toMatchObject({
      walker: { mass: 85, from: "searched" },
      searches: [95, 85],
    });
    expect(driven(crossing({}), () => false)).toMatchObject({
      walker: { mass: 80, from: "asked", looked: true },
      searches: [95, 85],
    });
    expect(driven(undefined, () => true)).toMatchObject({ walker: { mass: 80, from: "asked" }, searches: [] });
  });

  it("sweeps the mass from the file's own upwards, with record and day", () => {
    const [first] = driven(undefined, () => true).asked;
    expect(first).toMatchObject({
      kind: "sweep",
      question: { known: { on: ON }, knobs: [{ path: "walker.mass", from: 80, to: 120, unit: "kg" }], counts: [5] },
      options: { what: { kind: "margin" }, accuracy: "quick" },
    });
  });
});
