/** The report: its first page answers alone, and it says what every other face says. */

import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import { type Assessed, assessRig, type Outcome, parseWhatIf, study } from "@secondline/scenarios";
import type { WearRecord } from "@secondline/strength";
import { noteFact } from "@secondline/strength";
import { english, quantity, englishWords as words } from "@secondline/words";
import { facts } from "@secondline/words/facts";
import { tableWords } from "@secondline/words/tables";
import { untilWords } from "@secondline/words/until";
import { beforeAll, describe, expect, it } from "vitest";
import { inspectedIn, report } from "../src/index.ts";

const reading = readRig(readFileSync(new URL("../../../demo-data/old-rig.json", import.meta.url), "utf8"));
if (!reading.ok) throw new Error("the demo rig is not readable");
const assessed: Assessed = assessRig(reading.rig);
const { rig } = assessed;
const DATE = "2026-06-01";

let outcome: Outcome;
let html: string;
beforeAll(() => {
  const whatIfs = ["fall@0.5", "fails@1,standing@0.5"].map((key) => parseWhatIf(key)!);
  const work = study(assessed, { accuracy: "quick", whatIfs, traces: true });
  let step = work.next();
  while (!step.done) step = work.next();
  outcome = step.value.outcome;
  html = report(assessed, outcome, { date: DATE });
});

const plain = (part: string) =>
  part
    .replace(/<style>.*?<\/style>/s, "")
    .replace(/<[^>]+>/g, " ")
    .replaceAll("&#39;", "'")
    .replaceAll("&quot;", '"')
    .replaceAll("&nbsp;", " ")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ");

describe("the first page", () => {
  it("is enough for an answer: verdict, inputs, and the facts that decide, before the sketch and every table", () => {
    const page = plain(html.slice(0, html.indexOf("<svg")));
    expect(page).toContain(words.verdict(rig, outcome));
    expect(page).toContain("no wear record, no break tests");
    for (const { name, value } of facts(words.language, rig, outcome)) {
      expect(page).toContain(name);
      expect(page).toContain(value);
    }
    expect(page).toMatch(/Single points of failure Harness tie-in; Leash; /);
    expect(page).toMatch(/R [\d.]+ kN, E [\d.]+ kN, margin [\d.]+; required/);
  });

  it("has the warnings that nobody must miss: few what-ifs, a coarse mesh, invented numbers", () => {
    const page = plain(html.slice(0, html.indexOf("Every part</h2>")));
    expect(page).toMatch(/Not every what-if was run: 2 of \d+/);
    expect(page).toContain("coarse mesh");
    expect(page).toContain("every number of this rig is invented");
  });
});

it("counts on its first page the values that nobody confirmed, and names them", () => {
  const paths = ["main.pretension", "walker.mass", "ground"];
  const reason = { kind: "unconfirmed", paths } as const;
  const marked: Outcome = {
    ...outcome,
    verdict: "thin",
    reasons: [reason],
    cautions: [...outcome.cautions, reason],
  };
  const page = plain(report(assessed, marked, { date: DATE }).split("Every part</h2>")[0]!);
  expect(page).toContain("3 values are not confirmed.");
  expect(page).toContain("Not confirmed by anybody: Main line: tension; Walker: mass; Ground profile.");
  expect(plain(html)).not.toMatch(/values? (?:is|are) not confirmed|Not confirmed by anybody:/);
});

describe("the whole report", () => {
  it("gives every part and every what-if the numbers that words make of them", () => {
    const text = plain(html);
    for (const part of outcome.parts) {
      const { name, demand, band, strength, margin, required } = words.partRow(rig, part);
      expect(text).toContain(`${name} ${demand} ${band} ${strength} ${margin} ${required}`);
    }
    for (const one of outcome.whatIfs) {
      const { title, walker, main, backup, drop, feet, fate } = words.whatIfRow(rig, one);
      expect(text).toContain(`${title} ${walker} ${main} ${backup} ${drop} ${feet} ${fate}`);
    }
    for (const one of outcome.singles) {
      const { name, ways, leaves, shown } = tableWords.singleRow(rig, one);
      expect(text).toContain(`${name} ${ways} ${leaves} ${shown}`);
    }
  });

  it("prints all cautions, the weakest bases and the fingerprint of the input", () => {
    const text = plain(html);
    for (const caution of words.cautions(rig, outcome.cautions)) expect(text).toContain(caution);
    for (const basis of outcome.weakestBases) expect(text).toContain(words.basis(basis));
    expect(html).toContain(`<code>${outcome.hash}</code>`);
  });

  it("plots the forces of the what-ifs that govern", () => {
    expect(html).toMatch(/aria-label="Forces over time: \d+: /);
  });

  it("needs nothing from anywhere, and is the same when it is made again", () => {
    expect(html).not.toMatch(/(src|href)=|@import|url\(http|<script/);
    expect(report(assessed, outcome, { date: DATE })).toBe(html);
  });

  it("escapes whatever a document says", () => {
    const name = `<script>alert("x")</script> & 'co'`;
    const page = report(
      { ...assessed, rig: { ...rig, name, notes: name } },
      { ...outcome, rigName: name, notes: [noteFact("need.unfit", { name, reason: name })] },
      { date: DATE },
    );
    expect(page).not.toContain("<script>");
    expect(page).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; &#39;co&#39;");
  });

  it("speaks the language that it is given", () => {
    const sentences = { ...english.sentences, "head.parts": "Chaque pièce" };
    const page = report(assessed, outcome, { date: DATE, language: { code: "fr", sentences } });
    expect(page).toContain('<html lang="fr">');
    expect(page).toContain("<h2>Chaque pièce</h2>");
  });

  it("tells until when the rig may stay up, where a day was given", () => {
    const outlook = { on: DATE, parts: [], horizon: "2028-05-31" };
    const page = plain(report(assessed, outcome, { date: DATE, outlook }));
    expect(page).toContain(untilWords.sentence(rig, outlook, outcome));
  });
});

describe("what the report says besides", () => {
  it("tells on its first page the values that nobody confirmed and the day of the record", () => {
    const page = plain(html.slice(0, html.indexOf("<svg")));
    expect(page).toContain("Not confirmed by anybody no value is marked");
    expect(page).toContain("Date of the record none: the state is that of the rig's own file");
    const dated: Outcome = {
      ...outcome,
      taken: { on: DATE, wear: { name: "What hung where", lines: ["main"] }, judged: [] },
    };
    expect(plain(report(assessed, dated, { date: DATE }))).toContain("Date of the record 1 Jun 2026 (What hung where)");
  });

  it("draws all of the ground to scale, with every connection, and says the same in words", () => {
    const sketch = /<svg viewBox="0 0 640 (\d+)"[\s\S]*?<\/svg>/.exec(html)!;
    const height = Number(sketch[1]);
    const surface = [
      .../<path d="(M[^"]*)" fill="none" stroke="#59636b" stroke-width="1.2"/
        .exec(sketch[0])![1]!
        .matchAll(/[ML](-?[\d.]+) ([\d.]+)/g),
    ];
    expect(surface.length).toBe(rig.ground.length + 2);
    for (const [, , y] of surface) expect(Number(y)).toBeLessThan(height);
    // One scale for both directions.
    const [first, last] = [surface[1]!, surface.at(-2)!];
    const scale = (Number(last[1]) - Number(first[1])) / (rig.ground.at(-1)![0] - rig.ground[0]![0]);
    const low = rig.ground.reduce((a, b) => (b[1] < a[1] ? b : a));
    const at = surface[1 + rig.ground.indexOf(low)]!;
    expect((Number(at[2]) - Number(first[2])) / (rig.ground[0]![1] - low[1])).toBeCloseTo(scale, 1);
    expect(sketch[0].match(/<rect [^>]*width="3.2"|<circle [^>]*fill="#fff"/g)).toHaveLength(
      rig.backup!.connections.length,
    );
    expect(sketch[0]).toMatch(/aria-label="Side view of the rig, to scale: span [\d.]+ m, .*ground [\d.]+ m below A/);
  });

  it("tells both anchors' lines apart without colour, and reads their peaks out", () => {
    const plot = /<svg [^>]*aria-label="Forces over time[\s\S]*?<\/svg>/.exec(html)![0];
    expect(plot.match(/>A<\/text>/g)!.length).toBeGreaterThan(2);
    expect(plot.match(/>B<\/text>/g)!.length).toBeGreaterThan(2);
    expect(plot).toMatch(/stroke="#8a4a7d"[^>]*stroke-dasharray="5 3"/);
    expect(plot).toMatch(/Largest: walker [\d.]+ kN, anchor A [\d.]+ kN, anchor B [\d.]+ kN/);
    const heights = [...plot.matchAll(/<text x="535.0" y="([\d.]+)"/g)].map(([, y]) => Number(y)).sort((a, b) => a - b);
    expect(heights).toHaveLength(3);
    expect(Math.min(heights[1]! - heights[0]!, heights[2]! - heights[1]!)).toBeGreaterThan(10);
  });

  it("ends with who entered and looked at what: as known, the rest to fill by hand", () => {
    const looked = { by: "R. Keeper", on: "2026-05-30", judgement: "sound", found: "no marks" } as const;
    const inspected = [
      { of: { webbing: "Polyester webbing" }, ...looked },
      { of: { part: "connection.1" }, ...looked, judgement: "doubtful" } as const,
    ];
    const page = plain(report(assessed, outcome, { date: DATE, inspected }).split("Signed off</h2>")[1]!);
    expect(page).toContain("Entered the rig and its state");
    expect(page).toContain("Polyester webbing R. Keeper 30 May 2026 sound: no marks");
    expect(page).toContain("Connection 2 R. Keeper 30 May 2026 doubtful: no marks");
    expect(page).toContain("Looked at anchor B");
  });

  it("has the sweeps that were asked for, and says that none of them is a verdict", () => {
    const knob = {
      kind: "field",
      name: "backup.slack",
      path: "backup.slack",
      dimension: "share",
      from: 2,
      to: 14,
      unit: "%",
      whole: false,
    } as const;
    const governing = { event: { kind: "leashFall", at: 0.5 }, key: "fall@0.5" } as const;
    const curve = (value: number) => ({ value, low: value - 0.1, high: value + 0.1, ...governing });
    const point = (at: number, value: number) => ({
      values: [at],
      change: { "backup.slack": `${at} %` },
      curve: curve(value),
      runs: 8,
      failed: 0,
      lost: 0,
      ground: 0,
    });
    const limit = { kind: "required", value: 1 } as const;
    const swept = {
      rigName: rig.name,
      invented: false,
      knobs: [knob],
      what: { kind: "margin" },
      accuracy: "standard",
      bad: [],
      events: [],
      looked: 1,
      runs: 16,
      draws: 8,
      misfit: 1,
      points: [point(2, 1.3), point(14, 0.8)],
      line: [
        { at: 2, ...curve(1.3) },
        { at: 14, ...curve(0.8) },
      ],
      limits: [
        {
          limit,
          crossings: [{ limit, kept: "below", at: 9.2, governing: { ...governing, part: "leash", class: "expected" } }],
        },
      ],
      kept: [{ from: 2, to: 9.2 }],
      silent: [],
      besides: { judged: [], withheld: [], lapses: [] },
    } as const;
    const page = report(assessed, outcome, { date: DATE, sweeps: [{ swept, named: rig }] });
    const text = plain(page.split("How far it can go</h2>")[1]!);
    expect(text).toContain("says of no value that the rig holds");
    expect(text).toMatch(/Up to 9\.20 % slack .*the leash keeps the 2 that is required of it in falls/);
    expect(text).toContain("Kept in the curve: 2 % to 9.2 %.");
    expect(html).not.toContain("How far it can go");
  });
});

describe("what a record says that somebody looked at", () => {
  it("is of the webbing that is in the rig on that day, up to that day", () => {
    const entry = (date: string, event: string, more: object = {}) => ({ date, event, ...more });
    const looked = { by: "R. Keeper", found: "no marks", judgement: "sound" };
    const record = {
      name: "r",
      webbings: [
        {
          name: "Here",
          entries: [
            entry("2026-01-01", "rigged", { rig: rig.name }),
            entry("2026-02-01", "inspected", looked),
            entry("2026-09-01", "inspected", looked),
          ],
        },
        {
          name: "Elsewhere",
          entries: [entry("2026-01-01", "rigged", { rig: "another" }), entry("2026-02-01", "inspected", looked)],
        },
      ],
      parts: [{ rig: rig.name, part: "leash", entries: [entry("2026-01-15", "inspected", looked)] }],
    } as unknown as WearRecord;
    expect(inspectedIn(record, rig, "2026-06-01").map(({ of, on }) => ({ of, on }))).toEqual([
      { of: { part: "leash" }, on: "2026-01-15" },
      { of: { webbing: "Here" }, on: "2026-02-01" },
    ]);
  });
});

describe("forces over time", () => {
  it("have the band of the draws behind them where some were made, and say so", () => {
    const [first, ...others] = outcome.whatIfs;
    const { trace } = first!;
    const shifted = (by: number) => trace!.leash.map((force, i) => (i % 2 === 0 ? force : force + by));
    const band = { ...trace!, draws: 8, leash: shifted(2000) };
    const drawn = report(assessed, { ...outcome, whatIfs: [{ ...first!, band }, ...others] }, { date: DATE });
    const most = Math.max(...band.leash);
    expect(drawn).toContain(
      `the band of 8 falls drawn with all that scatters, in the leash up to ${quantity.load(most)}`,
    );
    expect(html).not.toContain("the band of 8 falls");
    // The axis goes up to the band.
    const ticks = [...drawn.matchAll(/text-anchor="end">(\d+(?:\.\d+)?)<\/text>/g)].map(([, kn]) => Number(kn));
    expect(Math.max(...ticks)).toBeGreaterThanOrEqual(Math.floor(most / 1000));
  });
});
