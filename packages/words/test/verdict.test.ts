/** The verdict's words follow its facts. */

import { PULL_LIMITS } from "@secondline/scenarios";
import { noteFact } from "@secondline/strength";
import { beforeAll, describe, expect, it } from "vitest";
import { tableWords } from "../src/createTableWords.ts";
import { facts } from "../src/factWords.ts";
import { englishWords as words } from "../src/index.ts";
import { untilWords } from "../src/untilWords.ts";
import { changed, demoRig, quickOutcome } from "./outcomes.ts";

const rig = demoRig("sound-rig.json");
let outcome: ReturnType<typeof quickOutcome>["outcome"];
beforeAll(() => {
  outcome = quickOutcome(rig).outcome;
});

describe("a verdict", () => {
  it("of a few what-ifs says how few, and never that the rig holds", () => {
    const sentence = words.verdict(rig, outcome);
    expect(sentence).toMatch(/^Nothing found in these 4 what-ifs alone\. That says nothing of the other \d+\./);
    expect(sentence).not.toMatch(/holds|keeps/);
    expect(words.verdictWord(outcome)).toBe("Nothing found yet");
    expect(outcome.parts.map((part) => words.partRow(rig, part).verdict)).not.toContain("holds");
  });

  it("counts values that nobody confirmed, and a caution names them by the part they belong to", () => {
    const paths = ["main.pretension", "main.sections[0].stock", "walker.mass", "span", "ground"];
    const alone = changed(outcome, { verdict: "thin", reasons: [{ kind: "unconfirmed", paths }] });
    expect(words.verdict(rig, alone)).toMatch(/^Thin: 5 values are not confirmed\./);
    const beside = [{ kind: "partThin", part: "main" } as const, { kind: "unconfirmed", paths: ["span"] } as const];
    expect(words.verdict(rig, changed(outcome, { verdict: "thin", reasons: beside }))).toContain(
      "1 value is not confirmed.",
    );
    expect(words.cautions(rig, [{ kind: "unconfirmed", paths }])).toEqual([
      "Not confirmed by anybody: Main line: tension, webbing; Walker: mass; Span; Ground profile.",
    ]);
  });

  it("names two parts of whose wear nothing is known, with all of it, and counts the others", () => {
    const of = (name: string, factor: string) => ({
      kind: "withheld" as const,
      what: noteFact("beyond.unwritten", { name: { brought: name }, factor: { brought: factor } }),
    });
    const outside = noteFact("outside.unit", { got: 60, from: 0, to: 24, unit: "months" });
    const worn = (name: string) => ({
      kind: "withheld" as const,
      what: noteFact("beyond.known", { name: { brought: name }, factor: { brought: "sun" }, outside }),
    });
    const thin = { kind: "partThin", part: "main" } as const;
    const told = (...more: (ReturnType<typeof of> | ReturnType<typeof worn>)[]) =>
      words.verdict(rig, changed(outcome, { verdict: "thin", reasons: [thin, ...more] }));
    expect(told(of("Leash", "sun"), of("Leash", "age"))).toContain(
      "Not said to hold: Leash, sun: not written down; the worst is counted, which lies beyond what is known. Not said to hold: Leash, age:",
    );
    const many = [of("Leash", "sun"), of("Leash", "age"), of("Sling", "sun"), of("Backup", "sun")];
    expect(told(...many)).toContain(
      "Not said to hold, for wear that is not written down: Leash (sun, age); Sling (sun); one more part.",
    );
    expect(told(...many).match(/Not said to hold/g)).toHaveLength(1);
    expect(told(of("Leash", "sun"), worn("Sling"), worn("Backup"))).toContain(
      "Not said to hold, for more wear than anything is known of: Sling (sun); Backup (sun). Not said to hold, for wear that is not written down: Leash (sun).",
    );
  });

  it("says beside a strength of 0.00 that nothing is known of the part, and only where that is why", () => {
    const none = outcome.parts.map((part) => ({
      ...part,
      byClass: Object.fromEntries(Object.entries(part.byClass).map(([name, one]) => [name, { ...one, strength5: 4 }])),
    }));
    const thin = { kind: "partThin", part: "main" } as const;
    const blank = noteFact("beyond.unwritten", { name: { brought: "Leash" }, factor: { brought: "sun" } });
    const told = (parts: typeof outcome.parts, ...more: { kind: "withheld"; what: typeof blank }[]) =>
      words.verdict(rig, changed(outcome, { verdict: "thin", parts, reasons: [thin, ...more] }));
    const why = "so little is written down of a part's age and wear that no strength is counted";
    expect(told(none, { kind: "withheld", what: blank })).toContain(why);
    expect(told(none)).not.toContain(why);
    expect(told(outcome.parts, { kind: "withheld", what: blank })).not.toContain(why);
  });

  it("has lapsed where nobody has judged what happened since, says why and what to do, and never holds", () => {
    const lapses = [
      { of: { webbing: "Red webbing" }, kind: "tension", on: "2026-06-01" },
      { of: { part: "leash" }, kind: "falls", falls: 40.2, planned: 40 },
      { of: { part: "anchorA.hardware.0" }, kind: "overdue", due: "2026-06-02" },
    ] as const;
    const lapsed = { kind: "lapsed", lapses } as const;
    const alone = changed(outcome, { verdict: "thin", reasons: [lapsed] });
    expect(words.verdictWord(alone)).toBe("Lapsed");
    expect(words.verdict(rig, alone)).toMatch(
      /^Lapsed: Red webbing: tension set anew on 1 Jun 2026\. Inspect it\. Leash: 41 falls since it was inspected, 40 planned\. Inspect it\. One more thing likewise\./,
    );
    expect(words.verdict(rig, alone)).not.toMatch(/holds|keeps/);
    expect(words.reason(rig, alone, { ...lapsed, lapses: lapses.slice(2) })).toBe(
      "Lapsed: Sling, anchor A: to be inspected by 2 Jun 2026. Inspect it.",
    );
    const never = [{ of: { part: "leash" }, kind: "never" }] as const;
    expect(words.reason(rig, alone, { kind: "lapsed", lapses: never })).toBe(
      "Lapsed: Leash: not inspected since it was put up. Inspect it.",
    );
    const storm = [
      { of: { webbing: "w" }, kind: "open", sentence: noteFact("need.unfit", { name: "w", reason: "Ada" }) },
    ] as const;
    expect(words.reason(rig, alone, { kind: "lapsed", lapses: storm })).toBe(
      "Lapsed: w: judged unfit by Ada. It must come down.",
    );
    const failing = changed(outcome, { verdict: "fails", reasons: [{ kind: "pullTooHard" }, lapsed] });
    expect(words.verdictWord({ ...failing })).toBe("Fails");
  });

  it("names the parts that have no second, whatever their margin", () => {
    expect(words.singles(rig, outcome)).toMatch(/^Single points of failure.*harness tie-in; leash; /);
    expect(words.singles(rig, { singles: [] })).toContain("Every part has a second");
  });

  it("tells for a part below its factor which part then holds the walker", () => {
    const thin = changed(outcome, {
      verdict: "thin",
      reasons: [{ kind: "partThin", part: "main" }],
      followUps: [{ part: "main", during: 0, caughtBy: "backup", whatIf: 1 }],
    });
    expect(words.verdict(rig, thin)).toMatch(/^Thin: the main line .*When it gives way the backup holds the walker\./);
    expect(tableWords.follows(rig, thin)).toEqual([
      "Main line (leash fall in the middle): then the backup holds the walker.",
    ]);
    const none = changed(thin, { followUps: [{ part: "main", during: 0, caughtBy: "nothing" }] });
    expect(words.verdict(rig, none)).toContain("When it gives way nothing holds the walker.");
    expect(tableWords.follows(rig, none)[0]).toContain("then NOTHING holds the walker");
  });

  it("names the ground and a hard pull beside a part that fails", () => {
    const person = {
      demand: 8500,
      low: 8200,
      high: 8800,
      pull: 6600,
      loads: [6400, 6600],
      drawn: false,
      event: 0,
      passes: PULL_LIMITS.slice(0, 2),
      grade: "thin",
    } as const;
    const sentence = words.verdict(
      rig,
      changed(outcome, {
        verdict: "fails",
        person,
        reasons: [
          { kind: "partFails", part: "leash" },
          { kind: "ground", event: 1 },
          { kind: "partThin", part: "main" },
          { kind: "pullHard" },
        ],
      }),
    );
    expect(sentence).toMatch(/^Fails: the leash /);
    expect(sentence).toContain("The walker reaches the ground as well (main line fails at anchor A");
    expect(sentence).toContain("The pull on the person may come to 8.50 kN; the limit asked for is 8 kN, by");
    expect(sentence).toContain("One more part is thin.");
  });

  it("says of a part that fails whether more runs could tell otherwise", () => {
    const failing = (marginInterval: readonly [number, number]) => {
      const leash = outcome.parts.find(({ id }) => id === "leash")!;
      const byClass = { expected: { ...leash.byClass.expected!, margin: 0.99, marginInterval } };
      return words.verdict(
        rig,
        changed(outcome, {
          verdict: "fails",
          parts: outcome.parts.map((one) => (one === leash ? { ...one, byClass } : one)),
          reasons: [{ kind: "partFails", part: "leash" }],
        }),
      );
    };
    expect(failing([0.9, 0.995])).not.toContain("not settled");
    expect(failing([0.9659, 1.0529])).toContain(
      "This is not settled: its margin lies between 0.96 and 1.05, and more runs would tell.",
    );
  });

  it("says why the likeliest to go first is not the part with the least margin, and only where it is not", () => {
    const part = { value: 0.4, low: 0.39, high: 0.41 };
    const likelyFirst = { whatIf: 0, parts: [{ id: "leash", first: part, fails: part }] } as const;
    const facts = { likelyFirst, firstToFail: "leash", leastMargin: "main" } as const;
    expect(words.likelierFirst(rig, changed(outcome, facts))).toMatch(
      /likeliest be the leash \(40 %.*nearest to its required margin is the main line/,
    );
    expect(words.likelierFirst(rig, changed(outcome, { ...facts, leastMargin: "leash" }))).toBeUndefined();
  });

  it("tells of a weblock that slipped, and that loads end there", () => {
    const slips = [{ part: "endA", above: 3512, whatIfs: 9 }] as const;
    expect(words.cautions(rig, [{ kind: "slips", weblocks: slips }])).toEqual([
      expect.stringMatching(
        /^Weblock of the main line, A lets webbing through above 3\.52 kN, in 9 what-ifs .* loads end there\./,
      ),
    ]);
  });

  it("tells of a raised part in the verdict itself", () => {
    const judged = [{ part: "ring", factor: "own judgement", own: true, value: 1.2, reason: "pulled" }] as const;
    const raised = changed(outcome, { cautions: [{ kind: "judged", judged }] });
    expect(words.verdict(rig, raised)).toContain("RAISED by own judgement above what is known: Leash ring × 1.20.");
  });
});

it("what raises a webbing and its ends by the same tests is one caution, which names each of them with its margin", () => {
  const raised = { factor: "make", own: false, value: 1.01, reason: "six pulls" } as const;
  const judged = [
    { ...raised, part: "main", margin: 3.03 },
    { ...raised, part: "endA", margin: 2.02 },
    { ...raised, part: "endB" },
    { ...raised, part: "leash", reason: "two pulls" },
  ] as const;
  expect(words.cautions(rig, [{ kind: "judged", judged }])).toEqual([
    "RAISED: Main line counts as 1.01 times as strong as it otherwise would (make: six pulls); likewise: Weblock of the main line, A; Weblock of the main line, B. Without it the margins of these parts would be 3.00, 2.00, –.",
    "RAISED: Leash counts as 1.01 times as strong as it otherwise would (make: two pulls).",
  ]);
});

describe("the pull on the person", () => {
  it("is told against its own limits, the same limit the same everywhere", () => {
    const person = outcome.person!;
    const [first] = person.passes;
    expect(first).toBeUndefined();
    const fact = facts(words.language, rig, outcome).find(({ name }) => name === "Pull on the person")!;
    expect(fact.value).toMatch(/below every limit \(6 kN: EN 355/);
    expect(tableWords.personRow(outcome)!.strength).toBe("6 / 8 / 12");
    expect(tableWords.partsCaption().join(" ")).toContain("6 kN (published: EN 355");
  });
});

describe("what was taken into account", () => {
  it("is said even when nothing was given", () => {
    expect(words.taken(rig, outcome)).toBe("The rig's own file alone: no wear record, no break tests.");
    const wear = { name: "crag", lines: ["main"] } as const;
    const tests = { given: 13, count: 5 };
    const taken = { on: "2026-11-01", wear, tests, judged: ["leash"] } as const;
    expect(words.taken(rig, { taken })).toBe(
      'State of 1 Nov 2026 by the wear record "crag" (main line). 5 of 13 break tests say something of it. Own judgement counts in: leash.',
    );
  });
});

describe("until when", () => {
  const outlook = { on: "2026-06-01", parts: [], horizon: "2028-05-31" };
  const part = { part: "main", fails: false, marginNow: 2, marginThen: 1.4, required: 1.5, flags: [] } as const;
  const said = (verdict: "holds" | "thin" | "fails" | "open", when: "now" | "later" | "beyond") =>
    untilWords.sentence(
      rig,
      { ...outlook, parts: [{ ...part, when, ...(when === "beyond" ? {} : { date: "2027-01-01" }) }] },
      changed(outcome, { verdict }),
    );

  it("says of a margin that is not settled that it is not settled, not that it is below", () => {
    const later = { ...part, when: "later", date: "2027-01-01", marginThen: 2.1, because: "unsettled" } as const;
    const sentence = (verdict: "holds" | "fails", parts: Parameters<typeof untilWords.sentence>[1]["parts"]) =>
      untilWords.sentence(rig, { ...outlook, parts }, changed(outcome, { verdict }));
    expect(sentence("holds", [later])).toBe(
      "Take it down before 1 Jan 2027: used on as so far, it is no longer settled then that the main line keeps what is required. More runs may put the date off.",
    );
    expect(sentence("fails", [later])).toContain("but the verdict is fails today already");
    const now = { ...later, when: "now" } as const;
    expect(sentence("holds", [now])).toMatch(/^Not settled on 1 Jun 2026, .*: main line\.$/);
    expect(sentence("holds", [now, { ...part, part: "leash", when: "now" }])).toMatch(
      /^Already below what is required on 1 Jun 2026: leash\. Not settled on 1 Jun 2026, .*: main line\.$/,
    );
    const unknown = { ...later, because: "unknown" } as const;
    expect(sentence("holds", [unknown])).toBe(
      "Take it down before 1 Jan 2027: used on as so far, the main line is worn beyond what is known from then on, and nobody can say that it holds.",
    );
    expect(sentence("fails", [unknown])).toContain("but the verdict is fails today already");
    expect(sentence("holds", [{ ...unknown, when: "now" }])).toMatch(
      /^Worn beyond what is known already.*: main line\.$/,
    );
    expect(untilWords.part(unknown, "2028-05-31")).toBe("worn beyond what is known from 1 Jan 2027");
    expect(untilWords.short({ ...outlook, date: "2026-06-01", parts: [{ ...unknown, when: "now" }] })).toBe(
      "beyond what is known",
    );
    expect(untilWords.part(later, "2028-05-31")).toBe("not settled from 1 Jan 2027");
    expect(untilWords.short({ ...outlook, date: "2026-06-01", parts: [now] })).toBe("not settled");
  });

  it("is no good news under a verdict that is none", () => {
    expect(said("holds", "beyond")).toMatch(/^Used on as so far, every part keeps what is required until 31 May 2028/);
    for (const verdict of ["thin", "fails"] as const) {
      expect(said(verdict, "beyond")).toContain(`but the verdict is ${verdict} today`);
      expect(said(verdict, "later")).toContain(`but the verdict is ${verdict} today already`);
    }
    expect(said("open", "beyond")).toContain("an upper bound at best");
    expect(said("thin", "now")).toBe("Already below what is required on 1 Jun 2026: main line.");
  });
});

it("a blank is named by its field, not by its path", () => {
  const blanks = [{ part: "leash", field: "leash.falls", costs: 0.849 }] as const;
  const [text] = words.blanks(rig, { blanks });
  expect(text).toBe("Leash: Falls; counts as 84 % of what it would at best");
});
