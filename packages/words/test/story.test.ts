/** Who holds the walker is said from what happened, never from what was asked. */
import { describe, expect, it } from "vitest";
import { englishWords as words } from "../src/index.ts";
import { demoRig, gone, run } from "./outcomes.ts";

const rig = demoRig("sound-rig.json");
const told = (one: Parameters<typeof words.story>[1]) => words.story(rig, one).join(" ");

describe("a leash fall in which the main line parts", () => {
  const fall = run("fall@0.5", { caughtBy: "backup", gaveWay: [gone("main")] });

  it("is told as caught by the backup, with the main line among what gave way", () => {
    expect(told(fall)).toBe(
      "The backup caught you 5.5 m down. Main line gave way 1.45 s in. Hardest pull on your harness: 3.31 kN.",
    );
    expect(words.fate(rig, fall)).toBe("caught by the backup; main line gives way");
  });

  it("names nothing as catcher when the leash goes", () => {
    const lost = run("fall@0.5", { caughtBy: "nothing", lostBecause: "leash", gaveWay: [gone("leash")] });
    expect(told(lost)).toMatch(/^Your leash parted: nothing held you\./);
    expect(told(lost)).not.toContain("caught");
    expect(words.fate(rig, lost)).toBe("the leash parts");
  });
});

describe("a rig of which so little is known that it goes to pieces", () => {
  const pieces = Array.from({ length: 40 }, (_, i) => ({ ...gone("backup"), time: 0.01 * i }));
  const others = (["connection.0", "connection.1", "endB", "backup.endA"] as const).map((part) => gone(part));
  const fall = run("fails@0,hanging@0.5", {
    caughtBy: "nothing",
    lostBecause: "ground",
    gaveWay: [...pieces, ...others],
  });

  it("is told part by part, each once, and how many more there are", () => {
    const story = words.story(rig, fall);
    expect(story).toContain("Backup gave way 0.00 s in, then in 39 more places.");
    expect(story.filter((sentence) => sentence.includes("gave way"))).toHaveLength(5);
    expect(story.at(-2)).toBe("One more part gave way.");
    expect(words.fate(rig, fall).match(/backup/g)).toHaveLength(2);
  });
});

describe("what became of the walker", () => {
  it.each([
    [{ caughtBy: "both" }, "caught by main line and backup together"],
    [{ caughtBy: "remains" }, "caught by what is left of both lines"],
    [{ caughtBy: "nothing", lostBecause: "freeFall" }, "nothing holds the walker"],
    [{ caughtBy: "nothing", lostBecause: "ground", groundSpeed: 9.9 }, "reaches the ground"],
    [{ caughtBy: "backup", feetClearance: -0.2 }, "feet reach the ground"],
    [{ caughtBy: "nothing", lostBecause: "ring" }, "the ring parts"],
  ] as const)("is read off the facts: %j", (facts, text) => {
    expect(words.fate(rig, run("fails@0,hanging@0.5", facts))).toBe(text);
  });

  it("is not told of a run that gave no numbers", () => {
    const failed = run("fall@0.5", {
      ok: false,
      caughtBy: "nothing",
      trouble: { reason: "audit", detail: "12 % of the energy is missing" },
    });
    expect(words.fate(rig, failed)).toBe("not computed");
    expect(told(failed)).toContain("does not balance its own energy");
    expect(told(failed)).not.toContain("caught");
  });
});

describe("a leg that fails", () => {
  const leg = (which: number) => ({ kind: "legFails", anchor: "B", leg: which, walker: "caught", at: 0.5 }) as const;

  it("is told with the name of its rock point, as the list of parts has it", () => {
    expect(rig.anchorB.points.map(({ name }) => name)).toEqual(["Left bolt", "Right bolt"]);
    expect(words.eventTitle(rig, leg(1))).toBe(
      "Leg 2 of anchor B (Right bolt) fails, walker being caught in the middle",
    );
  });

  it("that the rig has not is told by its number alone", () => {
    expect(words.eventTitle(rig, leg(4))).toBe("Leg 5 of anchor B fails, walker being caught in the middle");
  });
});
