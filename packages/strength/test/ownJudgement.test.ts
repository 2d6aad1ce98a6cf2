import { judgePart, type OwnJudgement, type Rig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { futureFromRig, partStrengths, readDate } from "../src/index.ts";
import { exampleRig, rated, section } from "./exampleRig.ts";

const partOf = (rig: Rig, id: string) => partStrengths(rig).find((part) => part.id === id)!;
const judged = (id: string, own: OwnJudgement) => judgePart(exampleRig(), id, own)!;
const IDS = partStrengths(exampleRig()).map(({ id }) => id);

describe("an own judgement", () => {
  it.each(IDS)("of %s takes its share of that part, is its basis and is flagged with its reason", (id) => {
    const part = partOf(judged(id, { factor: 0.5, reason: "dropped from a height" }), id);
    expect(part.strength).toBeCloseTo(0.5 * partOf(exampleRig(), id).strength, 6);
    expect(part.bases.some(({ note }) => JSON.stringify(note).includes("dropped from a height"))).toBe(true);
    expect(JSON.stringify(part.flags)).toContain(
      '"basis.own","values":{"reason":"dropped from a height"}},"value":{"ratio":0.5}',
    );
  });

  it("without a factor takes the one for a part of which nothing is known, and is marked so", () => {
    const ring = partOf(judged("ring", { reason: "odd noise" }), "ring");
    expect(ring.strength).toBeCloseTo(0.7 * 0.95 * 40000, 6);
    expect(ring.noData).toBe(true);
    expect(JSON.stringify(ring.flags)).toContain('"basis.ownNoFactor","values":{"reason":"odd noise"}');
  });

  it("that raises the strength says so loudly, and widens the scatter", () => {
    const [before, after] = [exampleRig(), judged("leash", { factor: 1.2, reason: "own pulls" })].map((rig) =>
      partOf(rig, "leash"),
    );
    expect(after!.strength).toBeCloseTo(1.2 * before!.strength, 6);
    expect(JSON.stringify(after!.flags)).toContain('"raise":{"share":0.2}');
    expect(after!.sigmaLog).toBeGreaterThan(before!.sigmaLog);
  });

  it("of webbing that lifts a weblock up to what its metal holds is said of the weblock too", () => {
    const plain = exampleRig();
    const bare = partOf(plain, "endA");
    const endA = { ...plain.main.endA, kind: "weblock" as const, rated: rated((1.2 * bare.strength) / 0.95) };
    const rig: Rig = { ...plain, main: { ...plain.main, endA } };
    const end = partOf(judgePart(rig, "main", { factor: 1.5, reason: "own pulls" })!, "endA");
    expect(end.strength).toBeCloseTo(1.2 * bare.strength, 6);
    expect(JSON.stringify(end.flags)).toMatch(
      /"factor.raises".*"basis.own\w*","values":\{"reason":"own pulls".*"ratio":1\.2.*"raise":\{"share":0\.2\}/,
    );
  });

  it.each(["knot", "sewnLoop"] as const)(
    "of webbing, as a doubt, weakens a %s in it; above 1 it does not raise it",
    (kind) => {
      const plain = exampleRig();
      const rig: Rig = { ...plain, main: { ...plain.main, endA: { kind, rated: rated(30000) } } };
      const bare = partOf(rig, "endA").strength;
      const end = (factor: number) => partOf(judgePart(rig, "main", { factor, reason: "furry" })!, "endA");
      expect(end(0.5).strength).toBeCloseTo(0.5 * bare, 6);
      expect(JSON.stringify(end(0.5).flags)).toContain("furry");
      expect(end(1.3).strength).toBeCloseTo(bare, 6);
    },
  );

  it("stays on a rig that grows older", () => {
    const own = { factor: 0.6, reason: "frayed" };
    expect(futureFromRig(judged("main", own), "2026-05-01")(readDate("2026-11-01")!).main.sections[0]!.own).toEqual(
      own,
    );
  });
});

describe("a sling", () => {
  const rigged = (way: "straight" | "choked" | "basket") => {
    const rig = exampleRig();
    const sling = { ...rig.anchorA.hardware[0]!, rigged: way };
    return partOf({ ...rig, anchorA: { ...rig.anchorA, hardware: [sling] } }, "anchorA.hardware.0");
  };
  const asRated = partOf(exampleRig(), "anchorA.hardware.0");

  it("choked holds 0.8 of its straight pull, with the source of that as a basis", () => {
    expect(rigged("choked").strength).toBeCloseTo(0.8 * asRated.strength, 6);
    expect(rigged("choked").bases.some(({ note }) => JSON.stringify(note).includes("EN 1492-1"))).toBe(true);
    expect(rigged("straight").strength).toBe(asRated.strength);
  });

  it("in a basket holds more, never the double that only parallel strands give, and says that this raises it", () => {
    expect(rigged("basket").strength / asRated.strength).toBeCloseTo(1.4, 6);
    expect(JSON.stringify(rigged("basket").flags)).toContain("factor.raises");
  });
});

describe("heat and a slipped sheath", () => {
  const leash = (given: Partial<Rig["leash"]>) => {
    const rig = exampleRig();
    return partOf({ ...rig, leash: { ...rig.leash, ...given } }, "leash");
  };

  it("weaken the leash with a name and a basis each", () => {
    const [plain, slipped, glazed] = [leash({}), leash({ sheathSlip: 0.02 }), leash({ glazed: 0.1 })];
    expect(slipped.strength / plain.strength).toBeCloseTo(0.92, 6);
    expect(glazed.strength / plain.strength).toBeCloseTo(0.9, 6);
    expect(slipped.factors.map(({ name }) => name)).toContain("sheath slip");
    expect(glazed.factors.map(({ name }) => name)).toContain("heat glazing");
  });

  it("beyond what is known are cut by half and flagged", () => {
    const slipped = leash({ sheathSlip: 0.1 });
    expect(slipped.strength).toBeLessThan(0.5 * leash({}).strength);
    expect(JSON.stringify(slipped.flags)).toContain('"from":0,"to":0.05');
  });

  it("weaken webbing where they are and give the place its name", () => {
    const rig = exampleRig();
    const hot = section({ wear: [{ kind: "heat", from: 20, to: 20.2, depth: 0.2 }] });
    const main = partOf({ ...rig, main: { ...rig.main, sections: [hot] } }, "main");
    expect(main.weakest!.reason).toBe("glazed place");
    expect(main.strength).toBeCloseTo(0.8 * rated(30000).strength, 6);
  });
});
