/** The report: its first page answers alone, and it says what every other face says. */

import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import { type Assessed, assessRig, type Outcome, parseWhatIf, study } from "@secondline/scenarios";
import { english, englishWords as words } from "@secondline/words";
import { facts } from "@secondline/words/facts";
import { untilWords } from "@secondline/words/until";
import { beforeAll, describe, expect, it } from "vitest";
import { report } from "../src/index.ts";

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
  it("answers alone: verdict, what was taken, and the facts that it turns on, before the sketch and every table", () => {
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

  it("says what must not be missed beside it: few what-ifs, a coarse mesh, invented numbers", () => {
    const page = plain(html.slice(0, html.indexOf("Every part</h2>")));
    expect(page).toMatch(/Not every what-if was run: 2 of \d+/);
    expect(page).toContain("coarse mesh");
    expect(page).toContain("every number of this rig is invented");
  });
});

it("counts on its first page what nobody confirmed, and names it", () => {
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
  expect(plain(html)).not.toContain("onfirmed");
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
      const { name, ways, leaves, shown } = words.singleTableRow(rig, one);
      expect(text).toContain(`${name} ${ways} ${leaves} ${shown}`);
    }
  });

  it("prints all cautions, the weakest bases and the fingerprint of what was put in", () => {
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
      { ...outcome, rigName: name, notes: [name] },
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
