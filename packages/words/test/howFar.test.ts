import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import { KNOB_FAULTS, type Knob, type Swept } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { howFarWords as words } from "../src/howFarWords.ts";

const reading = readRig(readFileSync(new URL("../../../demo-data/sound-rig.json", import.meta.url), "utf8"));
if (!reading.ok) throw new Error("the demo rig is none");
const { rig } = reading;
const slack: Knob = {
  kind: "field",
  name: "backup.slack",
  path: "backup.slack",
  dimension: "share",
  from: 2,
  to: 14,
  unit: "%",
  whole: false,
};
const connections: Knob = { kind: "connections", name: "connections", from: 0, to: 5, unit: "", whole: true };
const limit = { kind: "required", value: 1 } as const;
const swept = (part: Partial<Swept>): Swept =>
  ({
    knobs: [slack],
    what: { kind: "margin" },
    points: [],
    limits: [{ limit, crossings: [] }],
    silent: [],
    besides: { judged: [], withheld: [], lapses: [] },
    ...part,
  }) as unknown as Swept;

describe("words of how far a number can go", () => {
  it("name numbers by their part", () => {
    expect(words.number(rig, slack)).toBe("Backup: slack");
    expect(words.number(rig, connections)).toBe("Backup: number of connections");
    expect(words.at([slack, connections], [9.12, 1])).toBe("9.12 % slack and 1 connection");
    // A value between two others has digits without end: the table tells no more of them than its button does.
    expect(words.point(slack, 4.583333333)).toBe("4.583 %");
    expect(words.at([slack], [4.583333333])).toBe("4.583 % slack");
  });

  it("tell where a limit is kept, rounded inwards", () => {
    expect(words.region(swept({ kept: [{ from: 2, to: 9.4321 }] }))).toBe("Kept in the curve: 2 % to 9.43 %.");
    expect(words.region(swept({ kept: [{ from: 3.381, to: 14 }] }))).toBe("Kept in the curve: 3.39 % to 14 %.");
    expect(words.region(swept({ kept: [{ from: 2, to: 14 }] }))).toBe(
      "Kept in the curve all over the range: 2 % to 14 %.",
    );
    expect(words.region(swept({ kept: [] }))).toBe("Kept nowhere in the range.");
    expect(words.region(swept({ limits: [] }))).toBe("No limit was set: the curve alone is shown.");
  });

  it("tell beside the margins of parts what a verdict limits too, and beside a drop do not", () => {
    const notes = (what: Swept["what"]) => words.sweep.notes(rig, swept({ what, misfit: 1, accuracy: "standard" }));
    expect(notes({ kind: "margin" })).toEqual([
      expect.stringMatching(/^These are the margins of parts\. .*pull on the person/),
    ]);
    expect(notes({ kind: "drop" })).toEqual([]);
  });

  it("name the what-ifs that gave no number, of which one may be the hardest", () => {
    const silent = [0.2, 0.4, 0.6, 0.8].map((at) => ({ event: { kind: "leashFall", at } as const, key: `fall@${at}` }));
    const [text] = words.sweep.notes(rig, swept({ what: { kind: "drop" }, silent }));
    expect(text).toMatch(
      /^4 what-ifs gave no number at one or more of the values where all were looked at, and are in no curve, though one of them may/,
    );
    expect(text).toMatch(/: Leash fall 12 m from anchor A; Leash fall 24 m from anchor A; Leash fall [^;]*\.$/);
    expect(words.sweep.notes(rig, swept({ what: { kind: "drop" }, silent: silent.slice(1, 2) }))[0]).toMatch(
      /^1 what-if gave no number at one or more of the values where all were looked at, and is in no curve, though it may be the hardest: /,
    );
  });

  it("never say of a sweep that a rig holds", () => {
    const map = swept({
      knobs: [slack, connections],
      points: [{}, {}] as unknown as Swept["points"],
      region: { limit, states: ["keeps", "keeps"], outline: [] },
    });
    expect(words.region(map)).toBe("Every pair of values keeps it.");
    expect(words.region(map)).not.toMatch(/holds/);
  });

  it("never say alone that all is kept where the ground is reached", () => {
    const points = [{ lost: 0, ground: 3 }] as unknown as Swept["points"];
    const kept = { points, kept: [{ from: 2, to: 14 }] };
    expect(words.region(swept(kept))).toBe("That apart: Kept in the curve all over the range: 2 % to 14 %.");
    const map = { knobs: [slack, connections], points, region: { limit, states: ["keeps"], outline: [] } } as const;
    expect(words.region(swept(map))).toBe("That apart: Every pair of values keeps it.");
  });

  it("have a sentence for every fault of a range", () => {
    for (const kind of KNOB_FAULTS) {
      const text = words.fault({ kind, text: "x", about: "100", example: "2 % to 14 %" });
      expect(text).not.toMatch(/--over|[{}]/);
      expect(text.length).toBeGreaterThan(2);
    }
  });
});
