import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished, scratch } from "./support/command.ts";

let secondline: (...args: string[]) => Promise<Finished>;
let folder: string;
beforeAll(async () => {
  secondline = await command();
  folder = scratch();
}, 60_000);

const given = [demo("old-rig.json"), "--wear", demo("old-rig-wear.json"), "--on", "2026-11-10"] as const;
const plain = (text: string) => text.replace(/\s+/g, " ");

describe("teardown", () => {
  let plan: Finished;
  beforeAll(async () => {
    const files = ["--sheet", join(folder, "sheet.html"), "--log", join(folder, "log.csv")];
    plan = await secondline("teardown", ...given, ...files);
  }, 60_000);

  it("lists the pieces with their cuts and what each teaches, the states left out, and the assumptions", () => {
    expect(plan.status).toBe(0);
    for (const words of [
      "12 pieces for 12 pulls",
      'Clamp mark, main line: 5.2 m – 6.8 m of "Polyester webbing with the red thread"',
      "14 months in the clamp. Main line: scatter ±",
      "For want of pulls these states are not in the plan:",
      "Leash without its knot: the leash is too short",
      "Assumed: grips with drums that take 0.6 m",
    ]) {
      expect(plain(plan.out)).toContain(words);
    }
    expect(Math.max(...plan.out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it("writes a sheet that needs nothing else, and a log with empty results", () => {
    const sheet = readFileSync(join(folder, "sheet.html"), "utf8");
    expect(sheet).not.toMatch(/<script|src=|href=|url\(/);
    expect(sheet.match(/class="label"/g)).toHaveLength(12);
    expect(sheet.match(/<svg/g)).toHaveLength(2);
    const log = readFileSync(join(folder, "log.csv"), "utf8");
    expect(log).toContain("clamp mark,dry,5.2 to 6.8 m from the marked end,18.23,15.83,0,14,,,,,,kN,,,piece P2");
  });

  it("tells a piece that did not break, or broke below a load, by its bound, never by a load that nobody measured", async () => {
    const log = readFileSync(join(folder, "log.csv"), "utf8");
    const results = join(folder, "bounds.csv");
    const told = async (outcome: string, load: string) => {
      writeFileSync(results, log.replace(/,,,,kN,,,piece P1$/m, `,${outcome},${load},,kN,,,piece P1`));
      return plain((await secondline("teardown", ...given, "--results", results)).out);
    };
    expect(await told("stopped", "46.5")).toContain("new: 1 test did not break, at 46.5 kN or more; built in 30.0 kN");
    expect(await told("broke below", "15.5")).toContain("new: 1 test broke below 15.5 kN; built in 30.0 kN");
    expect(await told("broke", "46.5")).toContain("new: 1 test in the middle 46.5 kN; built in 30.0 kN");
    expect(await told("broke below", "93")).toContain("Nowhere do results and built-in factors contradict each other.");
  });

  it("takes the filled-in log and tells what was learnt, before and after, with days of the next line", async () => {
    const log = readFileSync(join(folder, "log.csv"), "utf8");
    const filled = log.replace(/,,,,kN,,,piece P2$/m, ",broke,9.1,,kN,fibres,at the mark,piece P2");
    const results = join(folder, "results.csv");
    writeFileSync(results, filled);
    const learnt = await secondline("teardown", ...given, "--results", results);
    expect(learnt.status).toBe(0);
    expect(plain(learnt.out)).toContain(
      "1 of 1 results feed a factor of this rig. 11 rows of the log not filled in yet.",
    );
    expect(learnt.out).toMatch(/^Main line +7\.71 +\d\.\d\d +[−+]\d/m);
    expect(plain(learnt.out)).toContain("That is no take-down date");
    const json = await secondline("teardown", ...given, "--results", results, "--json");
    expect(JSON.parse(json.out)).toMatchObject({ counted: 1, empty: 11 });
  });

  it("escapes hostile names in the sheet", async () => {
    const evil = '"><img src=x onerror=alert(1)>';
    const record = JSON.parse(readFileSync(demo("old-rig-wear.json"), "utf8"));
    const rig = JSON.parse(readFileSync(demo("old-rig.json"), "utf8"));
    rig.name = evil;
    rig.rings[0].name = evil;
    for (const webbing of record.webbings) Object.assign(webbing, { id: `=${webbing.id}`, name: evil, mark: evil });
    for (const { entries } of record.webbings) for (const entry of entries) if (entry.rig) entry.rig = "long-gap-old";
    for (const part of record.parts) part.rig = "long-gap-old";
    const [rigFile, wearFile, sheet, log] = ["rig.json", "wear.json", "evil.html", "evil.csv"].map((name) =>
      join(folder, name),
    );
    writeFileSync(rigFile!, JSON.stringify(rig));
    writeFileSync(wearFile!, JSON.stringify(record));
    const done = await secondline(
      "teardown",
      rigFile!,
      "--wear",
      wearFile!,
      "--on",
      "2026-11-10",
      "--pulls",
      "4",
      "--sheet",
      sheet!,
      "--log",
      log!,
    );
    expect(done.err).toContain("Sheet written");
    expect(readFileSync(sheet!, "utf8")).not.toContain("<img");
    expect(readFileSync(log!, "utf8")).toContain(`"'=polyester-a"`);
  });

  it("refuses with place and remedy: a line that is down, another rig's record, a day too early, a log without results", async () => {
    const record = JSON.parse(readFileSync(demo("old-rig-wear.json"), "utf8"));
    for (const webbing of record.webbings) webbing.entries.push({ date: "2026-11-05", event: "takenDown" });
    const down = join(folder, "down.json");
    writeFileSync(down, JSON.stringify(record));
    const refusals: [readonly string[], string][] = [
      [
        [demo("old-rig.json"), "--wear", down, "--on", "2026-11-10"],
        "came down on 5 Nov 2026: ask for a day before that",
      ],
      [[demo("sound-rig.json"), ...given.slice(1)], "--wear: The wear record"],
      [[...given.slice(0, 3), "--on", "2024-01-01"], "--on: The day 1 Jan 2024 lies before"],
      [[...given, "--results", join(folder, "log.csv")], "no row has a result yet: write outcome"],
      [[...given, "--pulls", "1e3"], '--pulls: "1e3" is no number of pulls'],
      [[...given, "--sheet", demo("old-rig.json")], "is the input"],
      [[...given, "--results", demo("break-log.csv"), "--pulls", "3"], "belongs to the plan"],
    ];
    for (const [args, words] of refusals) {
      const refused = await secondline("teardown", ...args);
      expect(refused.status, words).toBe(2);
      expect(plain(refused.err)).toContain(words);
      expect(refused.out).toBe("");
    }
  });
});
