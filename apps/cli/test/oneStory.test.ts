/** One story per rig: terminal, data and report print the same number for the same fact. */
import { readFileSync } from "node:fs";
import { report } from "@secondline/report";
import { type Rig, readRig } from "@secondline/rig";
import { type Assessed, assess, type SearchResult, study, whatIfSet } from "@secondline/scenarios";
import { beforeAll, describe, expect, it } from "vitest";
import { checkText } from "../src/checkText.ts";
import { outcomeData } from "../src/outcomeData.ts";
import { computedOutlook } from "../src/outlook.ts";
import { demo } from "./support/command.ts";

const ON = "2026-06-01";

function rigOf(name: string): Rig {
  const reading = readRig(readFileSync(demo(name), "utf8"));
  if (!reading.ok) throw new Error(`${name} is not readable`);
  return reading.rig;
}

const plain = (text: string) => text.replace(/\s+/g, " ").trim();
const ENTITIES = { "&#39;": "'", "&quot;": '"', "&lt;": "<", "&gt;": ">", "&nbsp;": " ", "&amp;": "&" };
const textOf = (html: string) =>
  Object.entries(ENTITIES).reduce(
    (text, [entity, sign]) => text.replaceAll(entity, sign),
    html.replace(/<[^>]+>/g, " "),
  );

type Figures = readonly string[];

/** E, R, margin and required of every row of the terminal's table of parts, in order. */
function terminalParts(text: string): Figures[] {
  const [, body = ""] = text.split(/From harness to\s+(?:rock )?\s*Load E.*\n(?:rock *\n)?─+\n/);
  const rows = body.split("\nE: what")[0]!.split("\n");
  // Columns stand two spaces apart at least; a name that goes on in the next line stands there alone.
  const cells = rows.map((line) => line.trim().split(/ {2,}/));
  return cells.filter(({ length }) => length >= 7).map((row) => row.slice(1, 6));
}

/** The same of the report's. */
function reportParts(html: string): Figures[] {
  const table = html.slice(html.indexOf(">Every part</h2>")).split("</table>")[0]!;
  const rows = [...table.matchAll(/<tr>(<td.*?)<\/tr>/g)].map(([, cells]) =>
    [...cells!.matchAll(/<td[^>]*>(.*?)<\/td>/g)].map(([, cell]) => plain(textOf(cell!))),
  );
  return rows.map((cells) => cells.slice(1, 6));
}

/** Of every what-if by its number: walker, main, backup, drop, feet. */
function terminalWhatIfs(text: string): Map<string, Figures> {
  const [, body = ""] = text.split(/ What if +Walker.*\n─+\n/);
  const rows = body.split("\nOf one run each")[0]!.split("\n");
  const row = /^ *(\d+) .* {2,}([\d.–]+) +([\d.–]+) +([\d.–]+) +([\d.–]+) +([\d.–?]+|ground)$/;
  return new Map(
    rows.flatMap((line) => {
      const [, number, ...figures] = row.exec(line) ?? [];
      return number === undefined ? [] : [[number, figures] as const];
    }),
  );
}

function reportWhatIfs(html: string): Map<string, Figures> {
  const table = html.slice(html.indexOf(">Every what-if</h2>")).split("</table>")[0]!;
  const rows = [...table.matchAll(/<tr>(<td.*?)<\/tr>/g)].map(([, cells]) =>
    [...cells!.matchAll(/<td[^>]*>(.*?)<\/td>/g)].map(([, cell]) => plain(textOf(cell!))),
  );
  return new Map(rows.map((cells) => [cells[0]!, cells.slice(2, 7)] as const));
}

describe.each(["old-rig.json", "sound-rig.json", "loose-backup.json"])("%s", (name) => {
  let assessed: Assessed;
  let found: SearchResult;
  let [text, html] = ["", ""];
  let data: ReturnType<typeof outcomeData>;

  beforeAll(() => {
    const assessment = { rig: rigOf(name), on: ON };
    const reading = assess(assessment);
    if (!reading.ok) throw new Error("the demo rig cannot be assessed");
    assessed = reading.assessed;
    const { rig } = assessed;
    const whatIfs = whatIfSet({ rig, weakPlaces: [], size: "quick" }).slice(0, 6);
    const work = study(assessed, { accuracy: "quick", whatIfs });
    let step = work.next();
    while (!step.done) step = work.next();
    found = step.value;
    const { outcome } = found;
    const outlook = computedOutlook({ assessment, assessed }, found)!;
    text = checkText(rig, outcome, { all: true, why: false, singles: false, outlook });
    html = report(assessed, outcome, { date: ON, outlook });
    data = outcomeData(rig, outcome, outlook);
  });

  it("has the same E, R, margin and requirement of every part in the terminal and in the report", () => {
    const [terminal, paper] = [terminalParts(text), reportParts(html)];
    expect(terminal).toHaveLength(found.outcome.parts.length + 1);
    expect(paper).toEqual(terminal);
  });

  it("has the same figures of every what-if in both", () => {
    const [terminal, paper] = [terminalWhatIfs(text), reportWhatIfs(html)];
    expect(terminal.size).toBe(found.outcome.whatIfs.length);
    for (const [number, figures] of terminal) expect(paper.get(number)).toEqual(figures);
  });

  it("tells the same verdict, what was taken, single points, date and facts in all three", () => {
    const [terminal, paper] = [plain(text), plain(textOf(html))];
    const { sentence, words } = data;
    for (const said of [sentence, words.taken, words.singles, words.until!, ...words.facts.map(({ value }) => value)]) {
      expect(terminal).toContain(plain(said));
      expect(paper).toContain(plain(said));
    }
    for (const caution of words.cautions) {
      expect(terminal).toContain(plain(caution));
      expect(paper).toContain(plain(caution));
    }
  });

  it("shows nothing as holding that a part of the search cannot tell, nor that was not loaded", () => {
    expect(found.outcome.verdict).not.toBe("holds");
    for (const part of found.outcome.parts) {
      expect(part.verdict).not.toBe("holds");
      if (Object.keys(part.byClass).length === 0) expect(part.verdict).toBe("notLoaded");
    }
    expect(text).not.toMatch(/● holds/);
    expect(html).not.toMatch(/● holds/);
  });
});
