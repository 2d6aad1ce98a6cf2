import { readdirSync, readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import { KNOB_FAULTS, type Knob, type Swept } from "@secondline/scenarios";
import { noteFact } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { knobValue, sweepWords } from "../src/createSweepWords.ts";
import { filled } from "../src/language.ts";
import { SWEEP_ENGLISH } from "../src/sweepEnglish.ts";

const root = new URL("../../../", import.meta.url);
const sources = ["packages/words/src", "apps/cli/src"].flatMap((folder) =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.endsWith("sweepEnglish.ts"))
    .map((name) => readFileSync(new URL(`${folder}/${name}`, root), "utf8")),
);

describe("what is said of sweeps and studies", () => {
  const keys = Object.keys(SWEEP_ENGLISH) as (keyof typeof SWEEP_ENGLISH)[];

  it("has no sentence that nobody says", () => {
    const text = sources.join("\n");
    // A key that is put together: what stands before the first brace, and the shape of the rest.
    const patterns = [...text.matchAll(/`([\w.]+\.(?:\$\{[^}]*\}[\w.]*)+)`/g)].map(
      ([, one]) => new RegExp(`^${one!.replace(/\$\{[^}]*\}/g, "[\\w]+").replaceAll(".", "\\.")}$`),
    );
    const said = (key: string) => text.includes(`"${key}"`) || patterns.some((one) => one.test(key));
    expect(keys.filter((key) => !said(key))).toEqual([]);
  });

  it("has all braces closed, and a sentence for every fault of a range", () => {
    for (const key of keys) {
      const names = [...SWEEP_ENGLISH[key].matchAll(/\{(\w+)/g)].map(([, name]) => name!);
      for (const value of [1, 2]) {
        expect(filled(SWEEP_ENGLISH[key], Object.fromEntries(names.map((name) => [name, value])))).not.toMatch(/[{}|]/);
      }
    }
    for (const kind of KNOB_FAULTS) expect(keys).toContain(`fault.${kind}`);
  });
});

it("a value of the swept number has no more digits than it needs, also below zero", () => {
  const rise: Knob = {
    kind: "field",
    name: "rise",
    path: "rise",
    dimension: "length",
    unit: "m",
    from: -3,
    to: 12,
    whole: false,
  };
  expect([-1.2, -2, 0, 9.4, 10].map((value) => knobValue(rise, value, "nearest"))).toEqual([
    "−1.2 m",
    "−2 m",
    "0 m",
    "9.4 m",
    "10 m",
  ]);
});

const reading = readRig(readFileSync(new URL("demo-data/sound-rig.json", root), "utf8"));
if (!reading.ok) throw new Error("the demo rig is none");
const { rig } = reading;

const slack: Knob = {
  kind: "field",
  name: "backup.slack",
  path: "backup.slack",
  dimension: "share",
  unit: "%",
  from: 2,
  to: 14,
  whole: false,
};

describe("what is said of a sweep before its limits", () => {
  const worst = { value: 1.25, low: 1.2, high: 1.3, key: "fall@0.5", event: { kind: "leashFall", at: 0.5 } } as const;
  const limit = { kind: "required", value: 1 } as const;
  const none = { judged: [], withheld: [], lapses: [] };
  /** Kept all over the range; with how many runs at each of three values. */
  function swept(counts: {
    lost?: readonly number[];
    ground?: readonly number[];
    besides?: Partial<Swept["besides"]>;
  }) {
    const { lost = [0, 0, 0], ground = [0, 0, 0], besides } = counts;
    return {
      knobs: [slack],
      what: { kind: "margin" },
      points: [3, 7.5, 12].map((at, i) => ({
        values: [at],
        change: { "backup.slack": `${at} %` },
        runs: 64,
        failed: 0,
        lost: lost[i],
        ground: ground[i],
      })),
      limits: [{ limit, crossings: [], throughout: { keeps: true, sure: true, worst } }],
      besides: { ...none, ...besides },
    } as unknown as Swept;
  }
  const said = (counts: Parameters<typeof swept>[0]) => sweepWords.sentences(rig, swept(counts));
  const keeps = /^No part went below what is required anywhere in the range/;

  it("is nothing where nothing is worse", () => {
    expect(said({})).toEqual([expect.stringMatching(keeps)]);
  });

  it("is that the ground is reached, and at which values; then no kept limit stands alone", () => {
    const [ground, limits] = said({ ground: [64, 64, 64] });
    expect(ground).toBe(
      "The feet reach the ground in some runs at every value. A check says of such a rig that it fails.",
    );
    expect(limits).toMatch(/^That apart: No part went below/);
    expect(said({ ground: [0, 1, 64] })[0]).toMatch(
      /^The feet reach the ground in some runs at: backup\.slack = 7\.5 %; backup\.slack = 12 %\./,
    );
  });

  it("is that nothing holds the walker, whether or not the ground is reached as well", () => {
    expect(said({ lost: [32, 32, 32], ground: [32, 30, 32] }).slice(0, 2)).toEqual([
      expect.stringMatching(/^Nothing holds the walker in some runs at every value\./),
      expect.stringMatching(/^The feet reach the ground in some runs at every value\./),
    ]);
    expect(said({ lost: [0, 2, 0] })[0]).toMatch(/^Nothing holds the walker in some runs at: backup\.slack = 7\.5 %\./);
  });

  it("is each reason that withholds a verdict, and each lapse, in the words of a verdict", () => {
    const storm = (name: string) =>
      noteFact("need.on", { name, what: noteFact("need.storm", {}), since: { day: "2026-06-01" } });
    const withheld = [
      { what: storm("Main line"), points: [0, 1, 2] },
      { what: storm("Leash"), points: [2] },
    ];
    const lapses = [{ kind: "falls", of: { part: "leash" }, falls: 9, planned: 5 }] as never;
    const texts = said({ besides: { withheld, lapses } });
    expect(texts[0]).toMatch(/^Lapsed: /);
    expect(texts.slice(1, 3)).toEqual([
      expect.stringMatching(/^Not said to hold: Main line: .*who judged it how\.$/),
      expect.stringMatching(/^Not said to hold: Leash: .*who judged it how\. At: backup\.slack = 12 %\.$/),
    ]);
    expect(texts.at(-1)).toMatch(/^That apart: /);
  });

  it("has own judgements among its cautions", () => {
    const judged = [
      { part: "endA", factor: "own judgement", own: true, value: 1.5, reason: "I trust it" },
    ] as unknown as Swept["besides"]["judged"];
    const cautions = sweepWords.cautions(rig, swept({ besides: { judged } })).join("\n");
    expect(cautions).toContain("RAISED: ");
    expect(cautions).toContain("counts as 1.50 times as strong as it otherwise would (I trust it).");
  });
});

describe("stretches in which a limit is kept", () => {
  it("are rounded inwards, and left out where no number of so many digits lies in them", () => {
    expect(sweepWords.stretches(slack, [{ from: 2, to: 9.4399 }])).toBe("2 % to 9.43 %");
    expect(sweepWords.stretches(slack, [{ from: 3.381, to: 14 }])).toBe("3.39 % to 14 %");
    expect(
      sweepWords.stretches(slack, [
        { from: 2, to: 4 },
        { from: 5.071, to: 5.078 },
      ]),
    ).toBe("2 % to 4 %");
    expect(sweepWords.stretches(slack, [])).toBeUndefined();
    const mass: Knob = { ...slack, name: "walker.mass", dimension: "mass", unit: "kg", from: 60, to: 120 };
    // Three digits to the nearest would say 112 kg.
    expect(sweepWords.stretches(mass, [{ from: 60, to: 111.56 }])).toBe("60 kg to 111.5 kg");
  });
});
