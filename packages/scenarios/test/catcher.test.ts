import { judgePart, type PartId, type Rig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { assessRig, runWhatIf, type WhatIf } from "../src/index.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const shown = (rig: Rig, whatIf: WhatIf) => finish(runWhatIf(assessRig(rig), whatIf, { accuracy: "quick" })).outcome;
const weak = (part: PartId, factor: number) => judgePart(testRig, part, { factor, reason: "test" })!;
const fall: WhatIf = { kind: "leashFall", at: 0.5 };

describe("who holds the walker", () => {
  it("is the main line in a fall that it survives", () => {
    expect(shown(testRig, fall)).toMatchObject({ caughtBy: "main", gaveWay: [] });
  });

  it("is the backup when the main line parts in a fall, whatever was asked", () => {
    const outcome = shown(weak("main", 0.12), fall);
    expect(outcome.gaveWay.map(({ part }) => part)).toContain("main");
    expect(outcome.caughtBy).toBe("backup");
  });

  it("is the backup when the main line is said to fail", () => {
    expect(shown(testRig, { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" }).caughtBy).toBe("backup");
  });

  it("is nothing when the leash parts, and when there is no backup", () => {
    expect(shown(weak("leash", 0.1), fall)).toMatchObject({ caughtBy: "nothing", lostBecause: "leash" });
    const { backup: _, ...alone } = testRig;
    const lost = shown(alone, { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" });
    expect(lost.caughtBy).toBe("nothing");
    expect(["ground", "freeFall"]).toContain(lost.lostBecause);
  });

  it("is never a line that gave way", () => {
    const rigs = [testRig, weak("main", 0.15), weak("endB", 0.1), weak("backup", 0.1), weak("connection.1", 0.05)];
    const events: WhatIf[] = [
      fall,
      { kind: "mainFails", at: 0.3, cutAt: 1, walker: "standing" },
      { kind: "mainFails", at: 0.5, cutAt: 0.5, walker: "caught" },
    ];
    for (const rig of rigs) {
      for (const whatIf of events) {
        const { caughtBy, gaveWay } = shown(rig, whatIf);
        const parted = gaveWay.map(({ part }) => (part === "main" || part.startsWith("end") ? "main" : part));
        if (whatIf.kind === "mainFails" || parted.includes("main")) expect(["main", "both"]).not.toContain(caughtBy);
        if (gaveWay.some(({ part }) => part.startsWith("backup"))) expect(["backup", "both"]).not.toContain(caughtBy);
      }
    }
  });
});
