/** The site card's sentences follow its facts, and permit nothing that the facts do not. */

import { FIELDS } from "@secondline/rig";
import type { Outcome, SiteCard } from "@secondline/scenarios";
import { noteFact } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { type CardText, cardWords, leashText, overOn } from "../src/createCardWords.ts";
import { tellNote } from "../src/laterNoteWords.ts";
import { demoRig } from "./outcomes.ts";

const rig = demoRig("sound-rig.json");
/** What a card takes of an outcome. */
const outcome = {
  rigName: rig.name,
  verdict: "holds",
  reasons: [],
  whatIfs: [],
  cautions: [{ kind: "general" }, { kind: "scatter" }, { kind: "invented" }],
  search: { gaps: [] },
  followUps: [],
} as unknown as Outcome;

const GIVEN: SiteCard = {
  rigName: rig.name,
  invented: true,
  on: "2026-06-10",
  permission: "given",
  lapses: [],
  refusals: [],
  allows: {
    walker: { mass: 95, from: "searched", looked: true },
    until: { day: "2026-07-31", ends: "inspection" },
    falls: { left: 12, ends: "thin" },
  },
  nextInspection: "2026-07-31",
  singles: ["leash", "anchorA.hardware.0"],
  unfollowed: ["ring"],
  hash: "abc",
};
const { allows: _, ...BARE } = GIVEN;
const said = (card: SiteCard, of: Outcome = outcome): CardText =>
  cardWords.card({ rig, outcome: of, card, made: "2026-06-11" });
const row = (text: CardText, kind: string) => text.rows.find((one) => one.kind === kind);

const STORM = noteFact("need.on", {
  name: "Red webbing",
  what: noteFact("need.storm", {}),
  since: { day: "2026-06-01" },
});

describe("a card that permits", () => {
  const text = said(GIVEN);
  it("says who, until when and for how many falls, whichever comes first, and how many at once", () => {
    expect(text.word).toBe("Holds");
    expect(text.says).toBe("One walker up to 95 kg, until 31 Jul 2026 or for 12 more falls, whichever comes first.");
    expect(row(text, "persons")).toMatchObject({ value: "1", note: expect.stringContaining("not even in a rescue") });
    expect(row(said({ ...GIVEN, rescuer: 80 }), "persons")!.note).toContain("of up to 80 kg");
    expect(text.must.items).toEqual([]);
    expect(text.rows.map(({ kind }) => kind)).toEqual([
      "walker",
      "persons",
      "falls",
      "until",
      "inspection",
      "leash",
      "singles",
      "unfollowed",
    ]);
    expect(row(text, "unfollowed")).toMatchObject({ value: "Leash ring", note: expect.stringContaining("yourself") });
    expect(row(said({ ...GIVEN, unfollowed: [] }), "unfollowed")).toBeUndefined();
  });

  it("permits nobody heavier than was looked at: masses are rounded down, a walker's and a rescuer's", () => {
    const walker = { mass: 108.862, from: "asked", looked: false } as const;
    const own = { mass: 99.96, until: { day: "2026-07-01", ends: "thin" }, falls: { left: 80, ends: "thin" } } as const;
    const exact = said({ ...GIVEN, rescuer: 99.96, allows: { ...GIVEN.allows!, walker } });
    expect(exact.says).toContain("One walker up to 108.8 kg,");
    expect(row(exact, "walker")!.value).toBe("108.8 kg");
    expect(row(exact, "persons")!.note).toContain("of up to 99.9 kg");
    const heavier = { ...walker, from: "searched" } as const;
    expect(row(said({ ...GIVEN, allows: { ...GIVEN.allows!, walker: heavier, own } }), "walker")!.note).toContain(
      "With that of the rig's file, 99.9 kg:",
    );
  });

  it("gives every number its basis", () => {
    const note = (change: Partial<NonNullable<SiteCard["allows"]>>, kind: string) =>
      row(said({ ...GIVEN, allows: { ...GIVEN.allows!, ...change } }), kind)?.note;
    expect(note({}, "walker")).toMatch(/^By a whole search/);
    const own = { mass: 60, until: { day: "2026-07-01", ends: "thin" }, falls: { left: 80, ends: "thin" } } as const;
    expect(note({ own }, "walker")).toContain("With that of the rig's file, 60 kg: until 1 Jul 2026, 80 falls.");
    expect(note({ walker: { mass: 80, from: "asked", looked: true } }, "walker")).toContain(
      "no search said that it holds",
    );
    expect(note({ walker: { mass: 80, from: "asked", looked: false } }, "walker")).toContain("were not looked at");
    expect(note({ until: { day: "2026-07-01", ends: "thin" } }, "until")).toContain("may keep less than required");
    expect(note({ until: { day: "2026-07-01", ends: "horizon" } }, "until")).toBe("Nobody looked further ahead.");
    expect(note({ until: { day: "2026-07-01", ends: "record" } }, "until")).toContain("the wear record says more");
    expect(note({ falls: { left: 3, ends: "plan" } }, "falls")).toContain("planned between two inspections");
    const most = said({ ...GIVEN, allows: { ...GIVEN.allows!, falls: { left: 1000, ends: "most" } } });
    expect(row(most, "falls")!.value).toBe("1000 or more");
  });

  it("tells what makes it lapse, the remedy, and the text after its last day", () => {
    expect(text.lapse.items[0]).toBe("After 31 Jul 2026.");
    expect(text.lapse.items.join(" ")).toMatch(/12 more falls.*tension.*storm.*edge.*inspected it/);
    expect(text.late).toEqual({
      day: "2026-07-31",
      word: "Lapsed",
      says: expect.stringContaining("This card does not count"),
    });
    expect(said({ ...GIVEN, allows: { ...GIVEN.allows!, falls: { left: 1, ends: "thin" } } }).says).toContain(
      "1 more fall,",
    );
  });

  it("is over on the day after its last one, also where it is made only then", () => {
    expect(overOn(text, "2026-07-31")).toBeUndefined();
    expect(overOn(text, "2026-08-01")).toMatchObject({ word: "Lapsed", day: "2026-07-31" });
    expect(overOn(said({ ...BARE, permission: "none" }), "2026-08-01")).toBeUndefined();
  });

  it("does not go without the general cautions, nor without saying that a rig is invented", () => {
    expect(text.cautions.items.join(" ")).toMatch(/model of the rig.*Do not rig from these numbers alone.*invented/);
    expect(text.foot).toMatchObject({ state: "State of 10 Jun 2026.", hash: "abc" });
  });

  it("says so where the rig asks for less than is usual, and by how much", () => {
    const cautionsOf = (own: typeof rig) =>
      cardWords.card({ rig: own, outcome, card: GIVEN, made: "2026-06-11" }).cautions.items.join(" ");
    expect(cautionsOf(rig)).not.toContain("less than is usual");
    const loose = { ...rig, requiredFactor: { ...rig.requiredFactor, value: 1.2 } };
    expect(cautionsOf(loose)).toContain(
      "a margin of 1.2 in falls (usual 2), 1.5 after a failure (1.5), 1.0 m under the feet (1.0 m).",
    );
    expect(cautionsOf({ ...rig, requiredAfterFailure: 1 })).toContain("1 after a failure (1.5)");
    // Usual is what a rig that says nothing of it is asked for.
    const fallbackOf = (path: string) => (FIELDS[path] as { readonly fallback?: unknown }).fallback;
    expect(["requiredFactor", "requiredAfterFailure", "requiredClearance"].map(fallbackOf)).toEqual([2, 1.5, "1 m"]);
    expect(cautionsOf({ ...rig, requiredClearance: 0 })).toContain("0.0 m under the feet (1.0 m)");
  });

  it("names leash, knots and ring, and the parts without a second", () => {
    expect(leashText(rig)).toMatch(
      /^1\.4 m of Dynamic rope 10 mm; figure-eight at the ring, figure-eight at the harness; on one ring: /,
    );
    expect(leashText({ ...rig, leash: { ...rig.leash, knots: [] } })).toContain("sewn at both ends");
    expect(row(text, "singles")!.value).toBe("Leash; Sling, anchor A");
  });
});

describe("a card that permits nobody", () => {
  const numbers = ["walker", "persons", "falls", "until"];
  it("has no number that might be read as permission", () => {
    for (const permission of ["none", "lapsed"] as const) {
      const text = said({ ...BARE, permission });
      expect(text.rows.map(({ kind }) => kind).filter((kind) => numbers.includes(kind))).toEqual([]);
      expect(text.late).toBeUndefined();
      expect(`${text.word} ${text.says}`).not.toMatch(/[Hh]olds|up to/);
    }
    expect(row(said({ ...BARE, permission: "none", nextInspection: undefined } as never), "inspection")!.value).toBe(
      "not known",
    );
  });

  it.each([
    ["noRecord", "Write one."],
    ["noInspection", "Write down how often"],
    ["noDate", "not known"],
    ["noFalls", "not written down"],
    ["noFallLeft", "No more fall is left"],
  ] as const)("for %s says what must be done", (kind, text) => {
    const { word, must } = said({ ...BARE, permission: "none", refusals: [{ kind }] });
    expect(word).toBe("No permission");
    expect(must.items).toEqual([expect.stringContaining(text)]);
  });

  it("names the day after its making of which the record says something", () => {
    const refusals = [{ kind: "ahead", day: "2027-01-31" }] as const;
    expect(said({ ...BARE, permission: "none", refusals }).must.items[0]).toContain("entries up to 31 Jan 2027");
  });

  it("names the lines of which the record says nothing", () => {
    const refusals = [{ kind: "noLine", lines: ["backup"] }] as const;
    expect(said({ ...BARE, permission: "none", refusals }).must.items[0]).toContain("says nothing of the backup.");
  });

  it("names the values that nobody confirmed, once, and no verdict that says nothing else", () => {
    const paths = ["main.pretension", "span"];
    const thin = { ...outcome, verdict: "thin", reasons: [{ kind: "unconfirmed", paths }] } as unknown as Outcome;
    const refusals = [{ kind: "verdict" }, { kind: "unconfirmed", paths }] as const;
    expect(said({ ...BARE, permission: "none", refusals }, thin).must.items).toEqual([
      "2 values of the rig's file are not confirmed: Main line: tension; Span. Confirm or correct them.",
    ]);
  });

  it("has lapsed with everything that must be done, once", () => {
    const lapses = [
      { of: { webbing: "Red webbing" }, kind: "open", sentence: STORM },
      { of: { part: "leash" }, kind: "overdue", due: "2026-06-01" },
      { of: { part: "harness" }, kind: "never" },
    ] as const;
    const lapsed = {
      ...outcome,
      verdict: "thin",
      reasons: [
        { kind: "lapsed", lapses },
        { kind: "withheld", what: "a reading" },
      ],
    } as unknown as Outcome;
    const { word, says, must } = said(
      { ...BARE, permission: "lapsed", lapses, refusals: [{ kind: "verdict" }] },
      lapsed,
    );
    expect(`${word}: ${says}`).toMatch(/^Lapsed: This card does not count\./);
    expect(must.items).toEqual([
      tellNote(STORM),
      "Leash: to be inspected by 1 Jun 2026. Inspect it.",
      "Harness tie-in: not inspected since it was put up. Inspect it.",
      expect.stringMatching(/^Not said to hold: a reading/),
    ]);
  });
});
