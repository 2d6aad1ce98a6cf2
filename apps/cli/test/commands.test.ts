import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished, fixture, KEPT, scratch } from "./support/command.ts";

let secondline: (...args: string[]) => Promise<Finished>;
beforeAll(async () => {
  secondline = await command();
}, 60_000);

const few = ["--set", "quick", "--accuracy", "quick", ...KEPT];
const one = ["--accuracy", "quick", "--what-if", "fall@0.5", ...KEPT];
const plain = (text: string) => text.replace(/\s+/g, " ");
const widest = (text: string) => Math.max(...text.split("\n").map((line) => line.length));

describe("check", () => {
  let text: Finished;
  beforeAll(async () => {
    text = await secondline("check", demo("sound-rig.json"), ...few, "--all", "--why");
  });

  it("prints what was taken, what happens, every part, the verdict and the cautions, in at most 100 columns, without colour codes in a pipe", () => {
    expect(text.err).toBe("");
    expect(text.status).toBe(0);
    for (const words of [
      "The rig's own file alone: no wear record, no break tests.",
      "walker standing in the middle",
      "Harness tie-in",
      "Pull on the person",
      "Single points of failure",
      "Before you rely on this",
      "every number of this rig is invented",
    ]) {
      expect(plain(text.out)).toContain(words);
    }
    expect(widest(text.out)).toBeLessThanOrEqual(100);
    expect(text.out).not.toContain("\u001b");
  });

  it("gives every part E, R, a margin, the required margin with its class, and the what-if", () => {
    expect(text.out).toMatch(/From harness to rock +Load E +95 % +R +Margin +Required +Verdict +In/);
    expect(text.out).toMatch(
      /^Leash ring +[\d.]+ +[\d.–]+ +[\d.]+ +[\d.]+ +(2 in falls|1\.5 after a failure) +○ not settled +\d+$/m,
    );
    expect(text.out).toMatch(/^Pull on the person +[\d.]+ +[\d.–]+ +6 \/ 8 \/ 12 +– +– /m);
  });

  it("shows middle values apart and by name", () => {
    expect(text.out).toMatch(/From harness to rock +Largest run +Middle strength +Ratio/);
  });

  it("lists the part that carries the walker without any one part", () => {
    expect(text.out).toMatch(/^Leash +cut, untied +nothing: a single/m);
    expect(text.out).toMatch(/^Main line +cut +the backup +caught in /m);
  });

  it("prints the factors of strengths with --why, each with its basis", () => {
    expect(text.out).toMatch(/^Rated +[\d.]+ kN +(assumed|published|from memory|common practice|tested): /m);
    expect(text.out).toMatch(/^knot \(figure-eight\) +× 0\.\d+ ± [\d.]+ % +from memory: /m);
  });

  it("says of a quick look how little it is, and never that the rig holds", () => {
    const said = plain(text.out);
    expect(said).toMatch(/○ Nothing found yet: \d+ of \d+ what-ifs looked at\. This does not say that the rig holds\./);
    expect(said).not.toMatch(/● (Holds|holds)/);
  });

  it("gives the same as data, without a margin that is no number", async () => {
    const { out, status } = await secondline("check", demo("sound-rig.json"), ...few, "--json");
    expect(status).toBe(0);
    const outcome = JSON.parse(out);
    expect(plain(text.out)).toContain(outcome.sentence);
    expect(plain(text.out)).toContain(outcome.words.singles);
    for (const { value } of outcome.words.facts) expect(plain(text.out)).toContain(value);
    expect(outcome.parts.map((part: { id: string }) => part.id)).toEqual(
      expect.arrayContaining(["harness", "leash", "ring", "main", "backup", "endA", "endB", "anchorA.points.0"]),
    );
    expect(outcome.words.cautions.length).toBeGreaterThan(3);
    expect(out).not.toContain("null");
  });

  it("runs only the what-ifs asked for, and speaks of these alone", async () => {
    const asked = ["--what-if", "fall@0.3", "--what-if", "fails@1,hanging@0.6"];
    const { out } = await secondline(
      "check",
      demo("sound-rig.json"),
      "--accuracy",
      "quick",
      "--json",
      ...asked,
      ...KEPT,
    );
    const outcome = JSON.parse(out);
    expect(outcome.whatIfs.map((what: { whatIf: unknown }) => what.whatIf)).toEqual([
      { kind: "leashFall", at: 0.3 },
      { kind: "mainFails", at: 0.6, cutAt: 1, walker: "hanging" },
    ]);
    expect(outcome.sentence).toMatch(/^Nothing found in these 2 what-ifs alone\. That says nothing of the other \d+\./);
  });
});

describe("check --require", () => {
  it.each([
    ["--what-if", "fall@0.5", "--what-if looks at chosen what-ifs alone"],
    ["--set", "quick", "--set quick looks at a few what-ifs"],
    ["--accuracy", "quick", "--accuracy quick is a first look"],
  ])("refuses %s %s: that is less than the whole", async (option, value, words) => {
    const { status, err, out } = await secondline("check", demo("loose-backup.json"), option, value, "--require");
    expect(status).toBe(2);
    expect(err).toContain(words);
    expect(out).toBe("");
  });
});

describe("the loose backup", () => {
  it("fails in a quick look already, names the leash among what has no second, and leaves with 0 unless required", async () => {
    const { status, out } = await secondline("check", demo("loose-backup.json"), ...few, "--json");
    expect(status).toBe(0);
    const outcome = JSON.parse(out);
    expect(["fails", "thin"]).toContain(outcome.verdict);
    expect(outcome.sentence).toMatch(/^(Fails|Thin): /);
    expect(outcome.words.singles).toContain("leash;");
  });
});

describe("a rig with its wear record", () => {
  const worn = [demo("old-rig.json"), "--wear", demo("old-rig-wear.json"), "--on", "2026-11-01"];

  it("is shown along its length with the bases of every stretch, the old clamp mark among what must be looked at", async () => {
    const { status, out } = await secondline("wear", ...worn);
    expect(status).toBe(0);
    expect(out).toMatch(/an old clamp mark of 14 months\s+lies inside the loaded\s+span/);
    expect(out).toMatch(/clamp mark × 0\.\d+/);
    expect(out).toMatch(/^A [▁▂▃▄▅▆▇█]{60} B$/m);
    expect(out).toMatch(/^ +1 {2}(assumed|published|from memory|common practice|tested): /m);
    expect(plain(out)).toContain("State of 1 Nov 2026 by the wear record");
    expect(widest(out)).toBeLessThanOrEqual(100);
    const data = JSON.parse((await secondline("wear", ...worn, "--json")).out);
    expect(data.parts.find((part: { id: string }) => part.id === "main").weakest.reason).toBe("clamp mark");
  });

  it("is given a take-down date that does not contradict its verdict", async () => {
    const { out } = await secondline("check", ...worn, ...few, "--json");
    const { outlook, parts, words, notes, taken } = JSON.parse(out);
    expect(notes.length).toBeGreaterThan(0);
    expect(outlook.on).toBe("2026-11-01");
    expect(taken.wear.lines).toEqual(["main", "backup"]);
    expect(words.taken).toMatch(/^State of 1 Nov 2026 by the wear record .* No break tests\.$/);
    const now = outlook.parts
      .filter(({ when }: { when: string }) => when === "now")
      .map(({ part }: { part: string }) => part);
    const below = parts
      .filter(({ verdict }: { verdict: string }) => verdict === "fails" || verdict === "thin")
      .map(({ id }: { id: string }) => id);
    expect(now.sort()).toEqual(below.sort());
  });

  it("is judged by own break tests where there are some, and says so", async () => {
    const main = (finished: Finished) =>
      JSON.parse(finished.out).parts.find((part: { id: string }) => part.id === "main").bases;
    const tested = await secondline("check", ...worn, ...one, "--json", "--tests", demo("break-log.csv"));
    expect(JSON.stringify(main(tested))).toContain("own break test");
    expect(JSON.parse(tested.out).words.taken).toMatch(/\d+ of \d+ break tests say something of it\.$/);
  });

  it.each([
    [["--wear", demo("old-rig-wear.json")], "--on: A wear record gives a state only on a date"],
    [["--wear", demo("old-rig-wear.json"), "--on", "1999-01-01"], "before the wear record begins"],
    [["--on", "2026-02-30"], 'got "2026-02-30"'],
  ])("is refused with place and remedy: %j", async (options, words) => {
    const { status, err, out } = await secondline("check", demo("old-rig.json"), ...options);
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toContain(words);
  });

  it("is refused when the record is of another rig, and told of which", async () => {
    const other = ["--wear", demo("old-rig-wear.json"), "--on", "2026-11-01"];
    for (const name of ["check", "validate"]) {
      const { status, err } = await secondline(name, demo("loose-backup.json"), ...other);
      expect(status).toBe(2);
      expect(err).toMatch(/--wear: The wear record .* has nothing that hangs in .*it speaks of .*long-gap-old/);
    }
  });
});

describe("solve", () => {
  const NAMES = [
    "standing.tension",
    "standing.sag",
    "leash.cfc60",
    "leash.peakTime",
    "mainA.cfc60",
    "mainB.cfc60",
    "backupA.cfc60",
    "backupB.cfc60",
    "walker.drop",
    "walker.lowest",
    "energy.gain",
    "firstBreak",
  ];

  it("prints one flat object of numbers", async () => {
    const { status, out, err } = await secondline("solve", fixture("short-fall.json"), "--json");
    expect(err).toBe("");
    expect(status).toBe(0);
    const result = JSON.parse(out);
    expect(Object.keys(result)).toEqual(NAMES);
    expect(result.firstBreak).toBeNull();
    expect(result["leash.cfc60"]).toBeGreaterThan(1000);
    expect(result["backupA.cfc60"]).toBe(0);
    expect(result["walker.drop"]).toBeGreaterThan(1.4);
  });

  it("tells what broke first, when and where", async () => {
    const problem = JSON.parse(readFileSync(fixture("short-fall.json"), "utf8"));
    problem.main.strength = 5000;
    const file = join(scratch(), "breaks.json");
    writeFileSync(file, JSON.stringify(problem));
    const result = JSON.parse((await secondline("solve", file, "--json")).out);
    expect(result.firstBreak).toBe("main");
    expect(result["firstBreak.time"]).toBeGreaterThan(0.3);
    expect(result["firstBreak.at"]).toBeGreaterThanOrEqual(0);
    expect(result["firstBreak.at"]).toBeLessThanOrEqual(1);
  });

  it("prints a table for people", async () => {
    const { out } = await secondline("solve", fixture("short-fall.json"), "--accuracy", "quick");
    expect(out).toMatch(/standing\.tension\s+\d+\s+N/);
  });
});

describe("compare", () => {
  const rigs = [demo("old-rig.json"), demo("loose-backup.json")];
  const known = ["--wear", demo("old-rig-wear.json"), "--on", "2026-11-01", "--judge", "leash=0.9: furry"];
  let text: Finished;
  beforeAll(async () => {
    text = await secondline("compare", ...rigs, ...few, ...known);
  });

  it("puts layouts side by side, each with its verdict, required margins, parts without a second and weakest bases", () => {
    expect(text.err).toBe("");
    expect(text.status).toBe(0);
    expect(text.out).toMatch(/^A Example crag, Long Gap: old$/m);
    expect(text.out).toMatch(/^ {3}[✕▲○] (Fails|Thin|Nothing)/m);
    const said = plain(text.out);
    expect(said.match(/Required: 2 in falls, 1\.5 after a failure\./g)).toHaveLength(2);
    expect(said.match(/Single points of failure/g)).toHaveLength(2);
    expect(said.match(/Rests on, weakest first: assumed: /g)).toHaveLength(2);
    expect(text.out).toMatch(/After a failure: deepest drop +[\d.]+ +[\d.]+ +\d+ %/);
    // A few what-ifs are no whole verdict: neither layout is said to be beaten or not.
    expect(said).toMatch(/Load, drop and weight: .*A (has no whole verdict|fails and stands outside)/);
    expect(said).not.toContain("not beaten");
    expect(widest(text.out)).toBeLessThanOrEqual(100);
  });

  it("says of each layout which state it took: the record's, or that the record says nothing of it", () => {
    const [a, b] = plain(text.out).split("B Example crag").map(plain);
    expect(a).toMatch(/State of 1 Nov 2026 by the wear record .*Own judgement counts in: leash\./);
    expect(b).toMatch(/The wear record says nothing of "Example crag.*": it is taken as its file has it\./);
  });

  it("marks margins with the standing of the part in its layout, and shows no unloaded part as strong", () => {
    expect(text.out).toMatch(/^Margin: Leash +[\d.]+ [✕▲○●] +(?:≤ )?[\d.]+ [✕▲○●]/m);
    expect(text.out).not.toContain("> 99");
    expect(text.out).not.toMatch(/NaN|Infinity|undefined/);
  });

  it("says whose caution is whose: those of all first", () => {
    const at = (words: string) => text.out.indexOf(words);
    expect(at("Before you rely on any of these:")).toBeGreaterThan(0);
    expect(at("A besides:")).toBeGreaterThan(at("This is a model of the rig, not the rig."));
    expect(text.out.split("This is a model of the rig, not the rig.")).toHaveLength(2);
  });

  it("refuses a record that says nothing of any of them", async () => {
    const strangers = [demo("sound-rig.json"), demo("loose-backup.json")];
    const { status, err } = await secondline(
      "compare",
      ...strangers,
      ...few,
      "--wear",
      demo("old-rig-wear.json"),
      "--on",
      "2026-11-01",
    );
    expect(status).toBe(2);
    expect(err).toContain("has nothing that hangs in");
  });
});

describe("report", () => {
  it("writes a page that stands alone, and does not overwrite one unasked", async () => {
    const file = join(scratch(), "rig.html");
    const first = await secondline("report", demo("sound-rig.json"), "--out", file, ...few);
    expect(first.status).toBe(0);
    expect(first.err).toMatch(/^Nothing found yet: .*\nWritten to /);
    expect(existsSync(file)).toBe(true);
    const html = readFileSync(file, "utf8");
    expect(html).toContain("Before you rely on this");
    expect(html).toMatch(/<code>[0-9a-f]{64}<\/code>/);
    expect(html).not.toMatch(/(src|href)=|@import|url\(http|<script/);
    const again = await secondline("report", demo("sound-rig.json"), "--out", file, ...few);
    expect(again.status).toBe(2);
    expect(again.err).toContain("--force overwrites it");
    // The house's faces are in it.
    expect(html.match(/@font-face\{font-family:"(?:IBM Plex Sans|Source Serif 4)"/g)).toHaveLength(3);
  });

  it("refuses a sweep of a field that is no number of the rig, before it computes, and writes nothing", async () => {
    const file = join(scratch(), "rig.html");
    const ask = (...more: string[]) =>
      secondline("report", demo("sound-rig.json"), "--out", file, ...few, ...more, "--sweep", "backup.slak=2%..14%");
    const refused = await ask();
    expect([refused.status, existsSync(file)]).toEqual([2, false]);
    expect(refused.err).toMatch(/^--sweep: got "backup\.slak=2%\.\.14%"/);
    expect((await ask("--sweep-what", "speed")).err).toMatch(/^--sweep-what: got "speed"/);
  });
});

describe("card", () => {
  const day = ["--on", "2026-11-15"];
  it("of a rig without a record permits nobody, tells the remedy, and fails if permission is required", async () => {
    const file = join(scratch(), "card.html");
    const made = await secondline("card", demo("sound-rig.json"), ...day, "--out", file, ...few, "--require");
    expect(made.status).toBe(1);
    expect(made.err).toMatch(/^No permission: Nobody walks by this card\.\nNothing found yet/);
    expect(made.err).toContain("No wear record says what has happened to this rig.");
    const html = readFileSync(file, "utf8");
    expect(html).toMatch(/<code>[0-9a-f]{64}<\/code>/);
    expect(html).not.toMatch(/(src|href)=|@import|url\(http|<script|Heaviest walker/);
    const again = await secondline("card", demo("sound-rig.json"), ...day, "--out", file, ...few);
    expect(again.status).toBe(2);
    expect(again.err).toContain("--force overwrites it");
  });

  it("has lapsed where nobody looked after the tension was set, as the verdict has", async () => {
    const folder = scratch();
    const record = JSON.parse(readFileSync(demo("old-rig-wear.json"), "utf8"));
    const [main] = record.webbings;
    main.entries = main.entries.filter(({ event }: { event: string }) => event !== "inspected");
    const wear = join(folder, "wear.json");
    writeFileSync(wear, JSON.stringify(record));
    const known = [demo("old-rig.json"), "--wear", wear, ...day, ...few];
    const made = await secondline("card", ...known, "--out", join(folder, "card.html"));
    const set = "Polyester webbing with the red thread: tension set anew on 10 Oct 2026. Inspect it.";
    expect(made.status).toBe(0);
    expect(made.err).toContain("Lapsed: This card does not count.");
    expect(made.err).toContain(set);
    const checked = await secondline("check", ...known);
    expect(plain(checked.out)).toContain(`Lapsed: ${set}`);
  });
});

describe("strength", () => {
  it("shows every test, then doubts, then what nineteen of twenty hold", async () => {
    const { status, out } = await secondline("strength", fixture("breaks.csv"));
    expect(status).toBe(0);
    expect(out).toMatch(/new, dry: 5 tests/);
    expect(out.indexOf("•")).toBeLessThan(out.indexOf("with 95 % confidence"));
    expect(out).toContain("fall zone, dry: 2 tests");
  });

  it("writes its plots and their numbers, and overwrites nothing unasked", async () => {
    const folder = scratch();
    const files = ["--plot", join(folder, "plots.svg"), "--table", join(folder, "plots.csv")];
    const { status, err } = await secondline("strength", fixture("breaks.csv"), ...files);
    expect([status, err]).toEqual([
      0,
      expect.stringMatching(/^\d figures written to .*plots\.svg\.\n\d figures .*plots\.csv\.\n$/),
    ]);
    const svg = readFileSync(join(folder, "plots.svg"), "utf8");
    expect(svg).toMatch(/^<svg [^>]*role="img"/);
    expect(svg).toContain("on probability paper");
    expect(svg).toContain("This is a model of the rig");
    const table = readFileSync(join(folder, "plots.csv"), "utf8");
    expect(table).toMatch(/^# .*\n(# .*\n)*figure,of,series/);
    const again = await secondline("strength", fixture("breaks.csv"), ...files);
    expect([again.status, again.out]).toEqual([2, ""]);
    expect(again.err).toContain("--force overwrites it");
    const fits = await secondline("strength", fixture("breaks.csv"), ...files, "--figure", "fit", "--force");
    expect(fits.status).toBe(0);
    expect(readFileSync(join(folder, "plots.csv"), "utf8")).not.toMatch(/^re(sid|tent)/m);
  });

  it.each([
    [["--figure", "pie", "--plot", "x.svg"], '"pie" is none of fit, residuals, retention'],
    [["--figure", "fit"], "--figure: needs --plot FILE.svg or --table FILE.csv"],
    [["--dark", "--table", "x.csv"], "--dark: needs --plot FILE.svg"],
  ])("refuses %j", async (options, why) => {
    const { status, out, err } = await secondline("strength", fixture("breaks.csv"), ...options);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toContain(why);
  });

  it("reads a table with names of its own by a saved matching, and refuses one that does not fit", async () => {
    const [log, columns] = [join(scratch(), "own.csv"), join(scratch(), "columns.json")];
    writeFileSync(log, "Webbing;Load\nred;31,2\nred;30,1\n");
    const same = (text: string) => ({ same: text });
    const sources = {
      part: same("webbing"),
      state: same("new"),
      wet: same("dry"),
      outcome: same("broke"),
      unit: same("kN"),
    };
    const match = {
      secondline: "columns/1",
      words: {},
      dates: "ymd",
      columns: { ...sources, material: { column: "Webbing" }, result: { column: "Load" } },
    };
    writeFileSync(columns, JSON.stringify(match));
    const { status, out } = await secondline("strength", log, "--columns", columns);
    expect(status).toBe(0);
    expect(out).toContain("webbing, red, new, dry: 2 tests");
    writeFileSync(columns, JSON.stringify({ ...match, columns: { ...match.columns, result: { column: "Force" } } }));
    const wrong = await secondline("strength", log, "--columns", columns);
    expect([wrong.status, wrong.out]).toEqual([2, ""]);
    expect(wrong.err).toContain("a column “Force”, which the log does not have. Its columns: Webbing, Load.");
  });

  it("gives the same as data", async () => {
    const report = JSON.parse((await secondline("strength", fixture("breaks.csv"), "--json")).out);
    expect(report.groups).toHaveLength(2);
    const doubts = report.groups.flatMap((group: { doubts: { message: unknown }[] }) => group.doubts);
    expect(doubts.length).toBeGreaterThan(0);
    for (const { message } of doubts) expect(message).toMatch(/^\p{L}.*\.$|^\d.*\.$/u);
    const { at75, at95 } = report.groups[0].characteristic;
    expect(at95.value).toBeLessThan(at75.value);
    expect(at75.value).toBeLessThan(28_700);
  });
});
