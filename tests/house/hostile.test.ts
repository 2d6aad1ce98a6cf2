/** Texts that somebody else wrote: in a file, a report, a table or a pattern they stay texts. */
import { readFileSync } from "node:fs";
import { report, teardownSheet } from "@secondline/report";
import { parseBasis, parseQuantity, readJson, readRig } from "@secondline/rig";
import { assessRig, parseWhatIf, readErrata, readKnob, readPlan, readRecording, study } from "@secondline/scenarios";
import {
  planTeardown,
  readBreakLog,
  readWearRecord,
  type Teardown,
  teardownLog,
  writeBreakLog,
} from "@secondline/strength";
import { beforeAll, describe, expect, it } from "vitest";
import { demoRig } from "../support/demoRigs.ts";

const demo = (name: string) => readFileSync(new URL(`../../demo-data/${name}`, import.meta.url), "utf8");

/** The plan for the old demo rig, by its record. */
function teardown(): Teardown {
  const record = readWearRecord(demo("old-rig-wear.json"));
  if (!record.ok) throw new Error("the demo record cannot be read");
  const plan = planTeardown({ rig: demoRig("old-rig.json"), record: record.record, on: "2026-11-10" });
  if (!plan.ok) throw new Error("nothing of the demo rig hangs");
  return plan.teardown;
}

const plan = teardown();

/** Would run, load or close something where it is not escaped. */
const PAYLOADS = [
  "<script>alert(1)</script>",
  "<img src=x onerror=alert(1)>",
  '"><svg onload=alert(1)>',
  "' onmouseover='alert(1)",
  "</style><script>alert(1)</script>",
  "</title><iframe src=javascript:alert(1)>",
  "]]><script>alert(1)</script>",
  '\\"}</style><img src=x>',
];

/** A document with a payload before every name and note, one after another. */
function poisoned(document: unknown): unknown {
  let next = 0;
  const inside = (value: unknown, key: string): unknown => {
    if (Array.isArray(value)) return value.map((one) => inside(one, key));
    if (typeof value === "object" && value !== null)
      return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, inside(one, name)]));
    if (typeof value !== "string" || !["name", "notes", "reason"].includes(key)) return value;
    return `${PAYLOADS[next++ % PAYLOADS.length]} ${value}`;
  };
  return inside(document, "");
}

/** Elements of a page, by name and attributes, as a browser would read them. */
function elements(html: string): readonly string[] {
  return [
    ...html.replace(/<style>.*?<\/style>/gs, "<style>").matchAll(/<([a-z][a-z0-9]*)((?:\s+[\w-]+="[^"]*")*)\s*\/?>/gi),
  ].map(([, name]) => name!.toLowerCase());
}
/** What reports are made of; nothing in it runs or loads. */
const HARMLESS =
  /^(html|head|meta|title|style|body|h[1-6]|p|b|code|section|footer|header|main|div|span|ul|ol|li|dl|dt|dd|table|caption|thead|tbody|tr|th|td|figure|figcaption|svg|g|path|line|rect|circle|ellipse|polyline|polygon|text|tspan|defs|clippath|pattern|br|strong|em|small|time)$/;

const SIGNS: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
const escaped = (text: string) => text.replace(/[&<>"']/g, (sign) => SIGNS[sign]!);

describe("a page to print", () => {
  let html = "";
  let sheet = "";
  beforeAll(() => {
    const reading = readRig(JSON.stringify(poisoned(JSON.parse(demo("sound-rig.json")))));
    if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
    const work = study(assessRig(reading.rig), {
      accuracy: "quick",
      whatIfs: [parseWhatIf("fall@0.5")!],
      traces: true,
    });
    let step = work.next();
    while (!step.done) step = work.next();
    html = report(assessRig(reading.rig), step.value.outcome, { date: PAYLOADS.join(" ") });
    const name = PAYLOADS.join(" ");
    sheet = teardownSheet({ ...demoRig("old-rig.json"), name }, { ...plan, rig: name });
  }, 120_000);

  it.each(PAYLOADS)("prints %s as it is written", (payload) => {
    // A style holds texts in quotes of its own, in which other signs close something.
    for (const page of [html, sheet].map((one) => one.replace(/<style>.*?<\/style>/s, "")))
      expect([page.includes(escaped(payload)), page.includes(payload)]).toEqual([true, false]);
  });

  it("holds nothing that runs or loads, and one style that no name can close", () => {
    for (const page of [html, sheet]) {
      expect(elements(page).length).toBeGreaterThan(100);
      expect(elements(page).filter((name) => !HARMLESS.test(name))).toEqual([]);
      expect(page.match(/<\/style/gi)).toHaveLength(1);
      expect(page.match(/ on\w+="/gi)).toBeNull();
    }
  });
});

describe("a table", () => {
  const FORMULAS = ["=1+1", '=HYPERLINK("http://x","y")', "+1", "-1+cmd|' /C calc'!A0", "@SUM(A1)"];

  it.each(FORMULAS)("of break tests holds %s as a text, and gives it back", (formula) => {
    const csv = "part,material,state,wet,outcome,result,unit\nwebbing,polyester,new,dry,broke,31.2,kN\n";
    const reading = readBreakLog(csv);
    if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
    const tests = reading.tests.map((test) => ({
      ...test,
      part: formula,
      material: formula,
      state: formula,
      note: formula,
    }));
    const written = writeBreakLog(tests);
    expect(cells(written).filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
    const again = readBreakLog(written);
    expect(again.ok && again.tests[0]).toMatchObject({
      part: formula,
      material: formula,
      state: formula,
      note: formula,
    });
  });

  it("to fill in at the machine holds names as texts", () => {
    const pieces = plan.pieces.map((piece) => ({
      ...piece,
      row: { ...piece.row, part: "=1+1", material: "@SUM(A1)" },
    }));
    const written = teardownLog({ ...plan, pieces });
    expect(written).toContain("'=1+1");
    expect(cells(written).filter((cell) => /^[=+@\t\r]|^-\D/.test(cell))).toEqual([]);
  });
});

/** Cells of a CSV without line breaks in them, quotation marks taken off. */
const cells = (csv: string) =>
  csv
    .split("\n")
    .flatMap((line) =>
      [...line.matchAll(/(?:^|,)("(?:[^"]|"")*"|[^,]*)/g)].map(([, cell]) => cell!.replace(/^"|"$/g, "")),
    );

describe("a name that JavaScript keeps for itself", () => {
  const POLLUTED = '{"__proto__": {"polluted": 1}, "constructor": {"prototype": {"polluted": 1}}}';

  it("changes no object, whatever format it stands in, and is a fault", () => {
    const inside = (text: string, key: string) => text.replace(/\{/, `{"${key}": ${POLLUTED}, `);
    for (const key of ["__proto__", "constructor", "prototype", "walker"]) {
      expect(readRig(inside(demo("sound-rig.json"), key)).ok, key).toBe(false);
      expect(readWearRecord(inside(demo("old-rig-wear.json"), key)).ok, key).toBe(false);
      const plan = readJson(inside('{"secondline": "plan/1"}', key), { noun: "a plan", longest: 1e6 });
      expect(plan.parsed && readPlan(plan.document).ok, key).toBe(false);
      expect(readErrata(JSON.parse(inside('{"format": "secondline/errata/1"}', key)))).toBeUndefined();
    }
    readBreakLog("__proto__,constructor\n1,2\n");
    readRecording("# __proto__: 1\n# constructor: 2\ntime [s],force [kN]\n");
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
    expect(Object.prototype).not.toHaveProperty("polluted");
  });
});

describe("a long text made to be slow", () => {
  // Nothing is timed: what takes longer than the test may is slow by orders of magnitude.
  const N = 100_000;
  const SLOW = [
    "1",
    " ",
    "a",
    "(",
    ".",
    "1 ",
    "-",
    "e1",
    "@0.5,",
    "=",
    '"',
    "#",
    "\t",
    ";",
    "%",
    "1.".repeat(3),
    "fall@",
    "'",
  ].flatMap((piece) => {
    const long = piece.repeat(Math.ceil(N / piece.length));
    return [long, `${long}!`, `1${long}`, `1 k${long}N`];
  });
  const rig = demoRig("sound-rig.json");
  const document = JSON.parse(demo("sound-rig.json"));

  it("is refused by everything that reads a text, and soon", () => {
    for (const text of SLOW) {
      parseQuantity(text, "force");
      parseBasis(text);
      parseWhatIf(text);
      readKnob(text, { document, rig, dated: false });
      readBreakLog(text);
      readBreakLog(`part,material,state,wet,outcome,result,unit\n${text}`);
      readRecording(text);
      readRecording(`# format: ${text}\ntime [${text}],force [kN]\n${text},${text}\n`);
      readWearRecord(text);
      expect(readRig(text).ok).toBe(false);
      expect(readRig({ ...document, span: text, name: text, walker: { mass: text } }).ok).toBe(false);
    }
  }, 120_000);
});
