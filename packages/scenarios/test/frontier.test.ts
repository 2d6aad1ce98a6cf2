import { describe, expect, it } from "vitest";
import { frontier, type Outcome, type Rig } from "../src/index.ts";
import { searched } from "./madeUpRuns.ts";
import { testRig } from "./testRig.ts";

/** As much of an outcome as a frontier looks at [N], [m]. */
const layout = (load: number, drop: number, rig: Rig = testRig, more: Partial<Outcome> = {}) => ({
  rig,
  outcome: {
    rigName: "A rig",
    verdict: "holds",
    search: { complete: true },
    falls: { deepest: { drop } },
    cautions: [{ kind: "anchors", anchors: [{ demand: 0.7 * load }, { demand: load }] }],
    ...more,
  } as unknown as Outcome,
});
const heavier: Rig = {
  ...testRig,
  main: {
    ...testRig.main,
    sections: testRig.main.sections.map((one) => ({ ...one, stock: { ...one.stock, mass: 2 * one.stock.mass } })),
  },
};
const standings = (layouts: Parameters<typeof frontier>[0]) => frontier(layouts).map(({ standing }) => standing);

describe("load against drop against weight", () => {
  it("takes the anchor that is pulled harder, and weighs the webbing of both lines as they hang", () => {
    const [light, heavy] = frontier([layout(6000, 4), layout(6000, 4, heavier)]);
    expect(light!.at).toMatchObject({ load: 6000, drop: 4 });
    // Of a line that hangs over `span` metres, by hand: a little less of the main line for it is stretched, more of the backup for its slack.
    const { main, backup, span, rise } = testRig;
    const [mainMass, backupMass] = [main, backup!].map(
      ({ sections }) => sections[0]!.stock.mass * Math.hypot(span, rise),
    );
    expect(light!.at!.weight).toBeGreaterThan(0.9 * mainMass! + backupMass!);
    expect(light!.at!.weight).toBeLessThan(mainMass! + (1 + backup!.slack) * backupMass!);
    expect(heavy!.at!.weight).toBeGreaterThan(light!.at!.weight + 0.9 * mainMass!);
  });

  it("beats a layout that has no less of anything and notably more of something, and says of what", () => {
    const all = standings([layout(6000, 4), layout(7000, 4), layout(5000, 6), layout(7000, 6, heavier)]);
    expect(all).toEqual([
      { kind: "unbeaten" },
      { kind: "beaten", by: 0, inWhat: ["load"] },
      { kind: "unbeaten" },
      { kind: "beaten", by: 0, inWhat: ["load", "drop", "weight"] },
    ]);
  });

  it("takes what differs by less than a mesh does for equal: neither beats the other", () => {
    expect(standings([layout(6000, 4), layout(6100, 4.05)])).toEqual([{ kind: "unbeaten" }, { kind: "unbeaten" }]);
  });

  it("lets none be beaten by one that fails or was not looked at as a whole: small loads of these are no merit", () => {
    const fails = layout(1000, 1, testRig, { verdict: "fails" });
    const part = layout(1000, 1, testRig, { verdict: "open", search: { complete: false } as Outcome["search"] });
    expect(standings([layout(6000, 4), fails, part])).toEqual([
      { kind: "unbeaten" },
      { kind: "fails" },
      { kind: "unknown" },
    ]);
  });

  it("is there of searches, whose loads of the anchors are E of either as a whole", () => {
    const { outcome } = searched(testRig, { run: () => ({ anchors: { A: 4000, B: 5000 } }) });
    const [found] = frontier([{ rig: testRig, outcome }]);
    expect(found!.standing).toEqual({ kind: "unbeaten" });
    expect(found!.at!.load).toBeGreaterThanOrEqual(5000);
    expect(found!.at!.drop).toBe(outcome.falls.deepest!.drop);
  });
});
