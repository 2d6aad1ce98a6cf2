/**
 * What riggers report from their lines and test machines, as orders of magnitude. Common practice, no source: nobody can
 * look these up, so they only guard against results that no rigger would believe.
 */
import type { Rig } from "@secondline/rig";
import { GENERIC_STOCKS } from "@secondline/rig";
import { partStrengths } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { demoRig } from "../support/demoRigs.ts";
import { outcomeOf } from "../support/run.ts";

const sound = demoRig("sound-rig.json");

/** Nothing left blank: what is not written down counts as the worst that it can be. */
const NEW = { monthsOutside: 0, ageYears: 0, wet: false } as const;

/** 60 m of polyester at 2.5 kN over a low-stretch backup 5 % longer, connected once. */
const comparable: Rig = {
  ...sound,
  rise: 0,
  main: {
    ...sound.main,
    pretension: 2500,
    sections: [{ stock: GENERIC_STOCKS.get("polyester-webbing-25")!, condition: NEW, wear: [] }],
  },
  backup: {
    ...sound.backup!,
    slack: 0.05,
    sections: [{ stock: GENERIC_STOCKS.get("hmpe-webbing-25")!, condition: NEW, wear: [] }],
    connections: [
      {
        at: 0.5,
        kind: "connection",
        rated: { strength: 20_000, basis: { kind: "assumed", note: "test" } },
        condition: NEW,
      },
    ],
  },
};
const unconnected: Rig = { ...comparable, backup: { ...comparable.backup!, connections: [] } };
const fails = { kind: "mainFails", at: 0.4, cutAt: 0, walker: "hanging" } as const;

describe("a main line that fails at one end", () => {
  // Several kN: common practice, no source.
  it("puts several kN on the rest of the main line when it is connected to the backup", () => {
    const { mainB } = outcomeOf(comparable, fails).peaks;
    expect(mainB).toBeGreaterThan(2000);
    expect(mainB).toBeLessThan(9000);
  });

  // Common practice, no source: without a connection the fall is longer and its catch harder.
  it("pulls clearly harder on backup and walker without the connection, and lets the walker fall deeper", () => {
    const [connected, loose] = [outcomeOf(comparable, fails), outcomeOf(unconnected, fails)];
    const backup = ({ peaks }: typeof loose) => Math.max(peaks.backupA, peaks.backupB);
    expect(backup(loose)).toBeGreaterThan(1.4 * backup(connected));
    expect(loose.peaks.leash).toBeGreaterThan(1.4 * connected.peaks.leash);
    expect(loose.drop).toBeGreaterThan(1.4 * connected.drop);
  });
});

describe("a leash of rope", () => {
  // Common practice, no source: a knotted leash breaks in its knot, far below what its ring holds.
  it("gives way in its knot, far below the ring", () => {
    const parts = partStrengths(sound);
    const [leash, ring] = ["leash", "ring"].map((id) => parts.find((part) => part.id === id)!);
    expect(leash!.weakest!.reason).toContain("knot");
    expect(leash!.strength).toBeLessThan(0.6 * ring!.strength);
    expect(leash!.strength).toBeLessThan(0.75 * sound.leash.stock.rated.strength);
  });
});

describe("an old line", () => {
  // Common practice, no source: where webbing sat long in a clamp it is the weakest, below its fall zone and its ends.
  it("is weakest where it sat long in a clamp", () => {
    const main = partStrengths(demoRig("old-rig.json")).find((part) => part.id === "main")!;
    expect(main.weakest!.reason).toContain("clamp mark");
    const falls = main.zones!.find((zone) => zone.reason === "fall zone")!;
    expect(main.strength).toBeLessThan(0.9 * falls.strength);
  });
});
