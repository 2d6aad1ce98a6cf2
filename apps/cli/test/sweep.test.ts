import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished, KEPT, repository, scratch } from "./support/command.ts";

let secondline: (...args: string[]) => Promise<Finished>;
beforeAll(async () => {
  secondline = await command();
}, 60_000);

const short = join(repository, "tests/cluster/data/short-rig.json");
const few = ["--accuracy", "quick", "--what-if", "fall@0.5", ...KEPT];
const plain = (text: string) => text.replace(/\s+/g, " ");

describe("sweep", () => {
  it("tells the values, a plot, where a limit is met and what was drawn, and never that a rig holds", async () => {
    const sweep = ["sweep", short, "--over", "leash.length=1m..2.2m", "--points", "4", "--what", "load:leash"];
    const { status, out, err } = await secondline(...sweep, "--limit", "8kN", ...few);
    expect(err).toBe("");
    expect(status).toBe(0);
    expect(out).toMatch(/^ *1\.4 m +\d\.\d+ kN +\d\.\d+ kN to \d\.\d+ kN +\d\.\d+ kN +fall@0\.5 +16$/m);
    expect(out).toContain("│ limit");
    expect(plain(out)).toMatch(/The limit of 8 kN is kept (up to|all over|from)/);
    expect(plain(out)).toContain("says of no value that the rig holds");
    expect(out).not.toMatch(/[●] /);
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it("gives the same as data, with the run behind every point, into a file that is not overwritten", async () => {
    const file = join(scratch(), "sweep.json");
    const sweep = ["sweep", short, "--over", "walker.mass=60kg..100kg", "--points", "3", "--what", "drop", ...few];
    const first = await secondline(...sweep, "--json", "--out", file);
    expect([first.status, first.out]).toEqual([0, ""]);
    const data = JSON.parse(readFileSync(file, "utf8"));
    expect(data.points.map((one: { change: object }) => one.change)).toEqual(
      ["60 kg", "80 kg", "100 kg"].map((mass) => ({ "walker.mass": mass })),
    );
    for (const { curve, run } of data.points) {
      expect(curve.low).toBeLessThan(curve.value);
      expect(run.whatIf).toBe("fall@0.5");
    }
    expect(data.points[2].curve.value).toBeGreaterThan(data.points[0].curve.value);
    const again = await secondline(...sweep, "--out", file);
    expect(again.status).toBe(2);
    expect(again.err).toContain("exists already");
  });

  it("over two numbers is a map with the outline of the pairs that keep the limit", async () => {
    const two = ["--over", "leash.length=1m..2m", "--over", "walker.mass=60kg..120kg", "--points", "3"];
    const { status, out } = await secondline("sweep", short, ...two, "--what", "drop", "--limit", "4.5m", ...few);
    expect(status).toBe(0);
    expect(out).toMatch(/leash\.length \\ walker\.mass +60 kg +90 kg +120 kg/);
    expect(out).toContain("Outline: leash.length that keep it with the whole 95 % band, by walker.mass:");
  });

  it("tells the values that give no rig, and goes on with the others", async () => {
    const { status, out } = await secondline(
      "sweep",
      short,
      "--over",
      "leash.length=0.1m..2.1m",
      "--points",
      "5",
      ...few,
    );
    expect(status).toBe(0);
    expect(plain(out)).toMatch(/Values with which the rig is none: · leash\.length = 0\.1 m: Length: /);
  });

  it.each([
    [["--over", "backup.slack=5%..5%"], "the range is empty"],
    [["--over", "backup.slack=14%..2%"], "goes backwards. Was backup.slack=2 %..14 % meant?"],
    [["--over", "backup.slak=2%..14%"], "has no number of that name"],
    [["--over", "backup.slack=2%..14%", "--points", "1"], '--points: got "1"; expected a whole number from 3 to 101'],
    [["--over", "backup.slack=2..14"], "has no unit"],
    [["--over", "months=0..24"], "say which with --on"],
    [["--over", "backup.slack"], "expected PATH=FROM..TO"],
    [["--over", "span=1m..2m"], "no value of the range gives a rig"],
    [["--over", "span=40m..50m", "--what", "load:nothing"], "the rig has no such part"],
    [["--over", "span=40m..50m", "--what", "luck"], "expected margin, drop, height or load:PART"],
    [["--over", "backup.slack=2%..14%", "--over", "backup.slack=2%..14%"], "is there twice"],
    [["--over", "backup.slack=2%..14%", "--limit", "many"], "--limit"],
    [[], "a sweep changes one number or two, got 0"],
  ])("refuses %j", async (options, words) => {
    const { status, out, err } = await secondline("sweep", demo("sound-rig.json"), ...options);
    expect(plain(err)).toContain(words);
    expect([status, out]).toEqual([2, ""]);
  });
});

describe("study", () => {
  const plan = (changes: object = {}) => {
    const folder = scratch();
    const file = join(folder, "plan.json");
    const whole = {
      secondline: "study/1",
      rigs: [short],
      sweeps: [{ over: ["backup.slack=4%..8%"], points: 2 }],
      whatIfs: ["fall@0.5"],
      draws: 2,
      accuracy: "quick",
      ...changes,
    };
    writeFileSync(file, JSON.stringify(whole));
    return { file, out: join(folder, "results") };
  };

  it("tells its cost before it is begun, makes its runs, and says how much is there", async () => {
    const { file, out } = plan();
    const cost = await secondline("study", file, "--cost");
    expect(cost.out).toMatch(/^4 runs to make: about .+ on one core, .+ on 16, .+ on 1000; 1 MB on the disk/);
    expect((await secondline("study", file, "--out", out, "--shard", "2/2")).err).toContain(
      "2 runs made, 0 were there, of 4",
    );
    expect((await secondline("study", file, "--out", out, "--status")).out).toContain(
      "2 of 4 runs are there, in 1 file.",
    );
    const merged = join(out, "merged.jsonl");
    const early = await secondline("study", "merge", out, "--out", merged);
    expect([early.status, existsSync(merged)]).toEqual([2, false]);
    expect(early.err).toContain("2 of 4 runs are missing");
    expect((await secondline("study", file, "--out", out)).err).toContain("2 runs made, 2 were there, of 4");
    expect((await secondline("study", "merge", out, "--out", merged)).status).toBe(0);
    const lines = readFileSync(merged, "utf8")
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(lines.slice(1).map(({ run }) => run)).toEqual([0, 1, 2, 3]);
    expect(lines[4]).toMatchObject({ set: { "backup.slack": "8 %" }, whatIf: "fall@0.5", draw: 1, ok: true });
  });

  it("refuses a folder with another plan's results, another version's, and a damaged file, and changes nothing", async () => {
    const { file, out } = plan();
    await secondline("study", file, "--out", out);
    const other = await secondline("study", plan({ draws: 3 }).file, "--out", out);
    expect([other.status, other.err]).toEqual([2, expect.stringContaining("results of another plan")]);
    const results = join(out, "runs-1-of-1.jsonl");
    const text = readFileSync(results, "utf8");
    // Runs stand in the order in which they ended; what has been written first is above the second run of the same number.
    const line = text.split("\n").findIndex((one) => one.startsWith('{"run":1,')) + 1;
    const second = Math.max(line, text.split("\n").findIndex((one) => one.startsWith('{"run":0,')) + 1);
    for (const [from, to, words] of [
      ['"version":"', '"version":"9.', "were made by version 9."],
      ['{"run":1,', '{"run":x,', `line ${line} is no result of a run`],
      ['{"run":1,', '{"run":0,', `line ${second} has run 0 a second time`],
      ['{"secondline"', '{"thirdline"', "does not begin as results of a study do"],
    ] as const) {
      const changed = text.replace(from, to);
      writeFileSync(results, changed);
      const { status, err } = await secondline("study", file, "--out", out);
      expect([status, err]).toEqual([2, expect.stringContaining(words)]);
      expect(readFileSync(results, "utf8")).toBe(changed);
    }
  });

  it.each([
    [
      { draws: 1_000_000, sweeps: [{ over: ["backup.slack=4%..8%"], points: 1000 }] },
      "runs; a study makes 10000000 at most",
    ],
    [{ sweeps: [{ over: ["backup.slack=4%..8%", "walker.mass=60kg..90kg"], points: 100 }] }, "takes 5000 at most"],
    [{ draws: 1_000_000, accuracy: "fine", sweeps: [] }, "more than 8 hours of one core. --yes begins it"],
    [{ sweeps: [{ over: ["span=1m..2m"], points: 2 }] }, "span = 1 m: "],
    [{ sweeps: [{ over: ["backup.slak=1%..2%"], points: 2 }] }, "has no number of that name"],
    [{ rigs: ["nowhere.json"] }, "there is no such file"],
    [{ rigs: [] }, "a list of 1 to 1000 names of rig files"],
    [{ whatIfs: ["tumble@0.5"] }, "whatIfs[0]"],
    [{ draws: 0 }, "a whole number from 1 to"],
    [{ colour: "red" }, "one of secondline, name"],
    [{ secondline: "study/2" }, '"study/1"'],
    [{ whatIfs: ["leg@A9,hanging@0.5"] }, "there is nothing to run"],
    [{ whatIfs: ["fall@0.5", "leg@A9,hanging@0.5"] }, "none of its rigs has what leg@A9,hanging@0.5 needs"],
    [{ whatIfs: ["fall@0.5", "fall@0.50"] }, "every what-if once"],
    [{ rigs: [short, short] }, "every rig file once"],
  ])("refuses %j", async (changes, words) => {
    const { file, out } = plan(changes);
    const { status, err } = await secondline("study", file, "--out", out);
    expect(plain(err)).toContain(words);
    expect(status).toBe(2);
    expect(existsSync(join(out, "runs-1-of-1.jsonl"))).toBe(false);
  });

  it("refuses a second program on the same shard, and takes over the lock of one that has ended", async () => {
    const { file, out } = plan();
    await secondline("study", file, "--out", out, "--shard", "1/2");
    const lock = join(out, "runs-2-of-2.lock");
    const { hostname } = await import("node:os");
    writeFileSync(lock, `${hostname()} ${process.pid} test\n`);
    const { status, err } = await secondline("study", file, "--out", out, "--shard", "2/2");
    expect([status, err]).toEqual([2, expect.stringContaining("another program is writing this shard")]);
    writeFileSync(lock, `${hostname()} 4194303 test\n`);
    expect((await secondline("study", file, "--out", out, "--shard", "2/2")).status).toBe(0);
    expect(existsSync(lock)).toBe(false);
  });

  it.each(["0/4", "5/4", "1", "a/b"])("refuses the shard %s", async (shard) => {
    const { file, out } = plan();
    const { status, err } = await secondline("study", file, "--out", out, "--shard", shard);
    expect([status, err]).toEqual([2, expect.stringContaining("expected i/n")]);
  });
});
