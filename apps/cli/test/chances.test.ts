import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished, KEPT } from "./support/command.ts";

let secondline: (...args: string[]) => Promise<Finished>;
beforeAll(async () => {
  secondline = await command();
}, 240_000);

const asked = [
  demo("old-rig.json"),
  "--what-if",
  "fall@0.05",
  "--runs",
  "16",
  "--seed",
  "3",
  "--accuracy",
  "quick",
  ...KEPT,
];

describe("chances", () => {
  let text: Finished;
  beforeAll(async () => {
    text = await secondline("chances", ...asked, "--spread", "mass=5%", "--spread", "friction=0");
  }, 240_000);

  it("prints who goes first, where the scatter comes from, every spread with its basis, and the cautions", () => {
    expect(text.err).toBe("");
    expect(text.status).toBe(0);
    expect(text.out).toMatch(/Likeliest to go first: Main line, clamp mark, \d+ %/);
    expect(text.out).toMatch(/Walker's mass +mass +80 kg ± 5 % +assumed: this spread/);
    expect(text.out).not.toContain("Friction of the ring");
    for (const words of ["Goes first", "The numbers rest on", "they promise", "number of this rig is invented"]) {
      expect(text.out).toContain(words);
    }
    expect(Math.max(...text.out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it("gives the same as data", async () => {
    const spreads = ["--spread", "mass=0.05", "--spread", "friction=0"];
    const { out, status } = await secondline("chances", ...asked, ...spreads, "--json");
    expect(status).toBe(0);
    const { chances } = JSON.parse(out);
    expect(chances).toHaveLength(1);
    expect(text.out.replace(/\s+/g, " ")).toContain(chances[0].sentence.replace(/\s+/g, " "));
    expect(chances[0]).toMatchObject({
      seed: 3,
      whatIf: { kind: "leashFall", at: 0.05 },
      runs: { asked: 16, done: 16 },
    });
    expect(chances[0].inputHash).toMatch(/^[0-9a-f]{64}$/);
  }, 240_000);

  it.each([
    ["--spread", "weather=5%", "--spread: got"],
    ["--spread", "mass=5", "at most 100 %"],
    ["--runs", "3", "from 16 to 512"],
    ["--seed", "x", "--seed: got"],
    ["--what-if", "fall@2", "--what-if: got"],
  ])("refuses %s %s", async (option, value, words) => {
    const { status, err, out } = await secondline("chances", demo("old-rig.json"), option, value);
    expect(status).toBe(2);
    expect(err).toContain(words);
    expect(out).toBe("");
  });
});
