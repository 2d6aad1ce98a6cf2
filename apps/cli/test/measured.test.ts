/** `measured`: a load cell's recording beside the model. The recordings here are computed and say so. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readRig } from "@secondline/rig";
import { assessRig, INPUT_IDS, modelSignals } from "@secondline/scenarios";
import { beforeAll, describe, expect, it } from "vitest";
import { command, type Finished, repository, scratch } from "./support/command.ts";

const rigFile = join(repository, "tests/cluster/data/short-rig.json");
const plain = (text: string) => text.replace(/\s+/g, " ");
let secondline: (...args: string[]) => Promise<Finished>;
let force: Float64Array;
let file: string;
beforeAll(async () => {
  secondline = await command();
  const reading = readRig(readFileSync(rigFile, "utf8"));
  if (!reading.ok) throw new Error("the rig of the test is no rig");
  const spreads = Object.fromEntries(INPUT_IDS.map((id) => [id, 0]));
  const options = {
    event: { kind: "leashFall", at: 0.5 },
    channel: "leash",
    draws: 1,
    accuracy: "quick",
    spreads,
  } as const;
  const work = modelSignals(assessRig(reading.rig), options);
  let step = work.next();
  while (!step.done) step = work.next();
  force = step.value.signals[0]!.force;
  file = join(scratch(), "fall.csv");
}, 120_000);

/** The engine's force at 1000 values a second, half a second after the first, as a file. */
function written(shown: (kilonewton: number, k: number) => string, head: readonly string[] = []): string {
  const rows = Array.from({ length: 4500 }, (_, k) => {
    const newton = force[Math.max(0, Math.min(force.length - 1, (k - 500) * 10))]!;
    return `${(k / 1000).toFixed(3)},${shown(newton / 1000, k)}`;
  });
  const lines = [
    "# format: secondline/measured/1",
    "# channel: leash",
    "# what-if: fall@0.5",
    "# source: synthetic: computed for a test",
    "# filter: CFC 60",
    ...head,
    "time [s],force [kN]",
    ...rows,
  ];
  writeFileSync(file, lines.join("\n"));
  return file;
}
const quick = ["--runs", "8", "--accuracy", "quick"];

describe("measured", () => {
  it("tells alignment, peak, impulse and the draws, that the recording is synthetic, and the cautions", async () => {
    const { status, out, err } = await secondline(
      "measured",
      written((kN) => kN.toFixed(4)),
      rigFile,
      ...quick,
    );
    expect([status, err]).toEqual([0, ""]);
    const text = plain(out);
    expect(text).toContain("Leash fall in the middle, measured in the leash");
    expect(text).toContain("This recording is synthetic. It says nothing about the model.");
    expect(text).toMatch(/Alignment: the model's first moment lies at 0\.\d{3} s of the recording/);
    expect(text).toMatch(/Peak \d\.\d\d kN \d\.\d\d kN \d\.\d\d kN – \d\.\d\d kN/);
    expect(text).toMatch(/Impulse over the catch \d\.\d\d kN·s/);
    expect(text).toMatch(/Peak: within the draws: \d of 8 lie below it\./);
    expect(text).toContain("The recording covers the whole catch.");
    expect(text).toContain("This is a model of the rig");
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it("tells a cell at its limit, and gives the same as data", async () => {
    const cut = written((kN) => Math.min(kN, 1.5).toFixed(4), ["# mass: 82 kg"]);
    const { out } = await secondline("measured", cut, rigFile, ...quick);
    expect(plain(out)).toContain("the force stands at 1.50 kN: the cell was at its limit");
    expect(plain(out)).toMatch(/Peak: (open|above all draws)/);
    expect(plain(out)).toContain("walker 82 kg");
    const data = JSON.parse((await secondline("measured", cut, rigFile, ...quick, "--json")).out);
    expect(data.peak).toMatchObject({ atLeast: true, draws: expect.any(Array) });
    expect(data.notes[0]).toMatchObject({ kind: "saturated", force: 1500 });
  });

  it("refuses another unit, another event and another kind of file, each with its place", async () => {
    const newtons = await secondline(
      "measured",
      written((kN) => (1000 * kN).toFixed(1)),
      rigFile,
    );
    expect(newtons.status).toBe(2);
    expect(newtons.err).toMatch(/one fault; nothing was compared\n +line \d+, force \[kN\]: .*Is the force in N/);
    const event = await secondline(
      "measured",
      written((kN) => kN.toFixed(4), ["# what-if: a whip"]),
      rigFile,
    );
    expect([event.status, plain(event.err)]).toEqual([2, expect.stringContaining('says "a whip"; expected an event')]);
    const rig = await secondline("measured", rigFile, rigFile);
    expect([rig.status, rig.err]).toEqual([2, expect.stringContaining("# format: secondline/measured/1")]);
    const channel = await secondline(
      "measured",
      written((kN) => kN.toFixed(4)),
      join(repository, "nowhere.json"),
    );
    expect(channel.status).toBe(2);
  });
});
