import { normalQuantile, seededRandom } from "@secondline/statistics";
import { logSpread } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { type KnobFault, NothingSwept, readKnob, type Swept, sweepPoints } from "../src/index.ts";
import { staticsOf } from "../src/search/conclude.ts";
import { context, knobOf, pointsOver, rig, swept, text } from "./sweptRuns.ts";

const faultOf = (asked: string): KnobFault | undefined => {
  const found = readKnob(asked, context);
  return found.ok ? undefined : found.fault;
};

const fall = { kind: "leashFall", at: 0.5 } as const;
const slack = knobOf("backup.slack=2%..14%");
const nine = pointsOver(["backup.slack=2%..14%"], 9);

describe("what a sweep is over", () => {
  it("is any number of the rig's file, in the unit that was asked in", () => {
    expect(knobOf("backup.slack=2..14 %")).toMatchObject({ path: "backup.slack", from: 2, to: 14, unit: "%" });
    expect(knobOf("main.pretension=2kN..3500N")).toMatchObject({ from: 2000, to: 3500, unit: "N" });
    expect(knobOf("connection.1.at=0.3..0.6")).toMatchObject({ path: "backup.connections[1].at", unit: "" });
    expect(knobOf("backup.connections[1].at=30%..60%")).toMatchObject({ from: 30, unit: "%" });
    for (const one of ["leash.length=1m..2m", "walker.mass=50kg..110kg", "span=40m..70m", "connections=0..5"]) {
      expect(knobOf(one).name).toBe(one.split("=")[0]);
    }
  });

  it("writes the value into the file, and puts connections evenly", () => {
    expect(nine.points.map(({ change }) => change["backup.slack"])).toEqual([
      "2 %",
      "3.5 %",
      "5 %",
      "6.5 %",
      "8 %",
      "9.5 %",
      "11 %",
      "12.5 %",
      "14 %",
    ]);
    expect(nine.points[2]!.assessed.rig.backup!.slack).toBeCloseTo(0.05, 12);
    const counted = pointsOver(["connections=0..3"], 4).points.map(({ assessed }) =>
      assessed.rig.backup!.connections.filter(({ kind }) => kind === "connection").map(({ at }) => at),
    );
    expect(counted).toEqual([[], [0.5], [0.333333, 0.666667], [0.25, 0.5, 0.75]]);
  });

  it("makes later days of months: weaker parts, the same runs", () => {
    const { points } = pointsOver(["months=0..24"], 3);
    expect(new Set(points.map(({ assessed }) => assessed.hash)).size).toBe(1);
    const main = points.map(({ strengths }) => strengths.parts.find(({ id }) => id === "main")!.strength5);
    expect(main[0]).toBeGreaterThan(main[1]!);
    expect(main[1]).toBeGreaterThan(main[2]!);
  });

  it.each([
    ["backup.slack", "form"],
    ["backup.slack=2%", "form"],
    ["backup.slak=2%..14%", "unknown"],
    ["__proto__.x=1..2", "form"],
    ["constructor=1..2", "unknown"],
    ["name=1..2", "notNumber"],
    ["connection.70.at=0.1..0.2", "unknown"],
    ["backup.connections[7].at=0.1..0.2", "absent"],
    ["backup.slack=2..14", "value"],
    ["backup.slack=2m..14m", "value"],
    ["span=NaN..60m", "value"],
    ["backup.slack=14%..2%", "reversed"],
    ["backup.slack=5%..5%", "empty"],
    ["connections=0..2.5", "whole"],
    ["connections=0..1000", "range"],
    ["connections=-1..3", "value"],
    ["months=0..24", "noDay"],
  ])("refuses %s: %s", (asked, kind) => {
    expect(faultOf(asked)?.kind).toBe(kind);
  });

  it("tells which values give no rig, and why, by the checks of the file", () => {
    const { points, bad } = pointsOver(["leash.length=0.1m..2.1m"], 5);
    expect(points.length).toBeGreaterThan(1);
    expect(points.length + bad.length).toBe(5);
    expect(bad[0]!.issues[0]!.path).toBe("leash.length");
  });
});

describe("a line next to no mass", () => {
  it("has over its span the sag and the tension of two straight pulls, by closed form", () => {
    const [mass, stiffness, weight] = [0.002, 150_000, 80 * 9.80665];
    const edited = JSON.parse(text);
    edited.stocks = [
      {
        id: "thread",
        name: "Thread",
        fibre: "polyester",
        form: "webbing",
        mass: `${mass} kg/m`,
        width: "25 mm",
        strength: "30 kN",
        basis: "assumed: test",
        curve: [
          ["0 %", "0 N"],
          ["10 %", `${0.1 * stiffness} N`],
        ],
        branches: [],
        curveBasis: "assumed: test",
      },
    ];
    edited.rise = "0 m";
    edited.main = { ...edited.main, sections: [{ stock: "thread" }] };
    delete edited.backup;
    edited.ground = [
      ["-10 m", "-60 m"],
      ["100 m", "-60 m"],
    ];
    for (const side of ["anchorA", "anchorB"]) delete edited[side].stiffness;
    const knob = knobOf("span=20m..80m", { ...context, document: edited });
    const { points, bad } = sweepPoints({ document: edited, known: {}, knobs: [knob], counts: [4] });
    expect(bad).toEqual([]);
    const ring = rig.rings[0]!.mass * 9.80665;
    for (const { values, assessed, strengths } of points) {
      const half = values[0]! / 2;
      const natural = (2 * half) / (1 + 2500 / stiffness);
      // Pull of both halves upwards = weight, by halving.
      const lift = (sag: number) => {
        const length = Math.hypot(half, sag);
        return (2 * stiffness * ((2 * length) / natural - 1) * sag) / length;
      };
      let [low, high] = [0, half];
      for (let i = 0; i < 80; i++) {
        const middle = (low + high) / 2;
        if (lift(middle) < weight + ring) low = middle;
        else high = middle;
      }
      const tension = ((weight + ring) / 2) * (Math.hypot(half, low) / low);
      const found = staticsOf(assessed.rig, strengths);
      // The thread's own weight is below 0.2 % of the walker's, and the ring hangs where the walker stands.
      expect(Math.abs(found.standingTension / tension - 1)).toBeLessThan(0.01);
      expect(Math.abs(found.standingSag / low - 1)).toBeLessThan(0.01);
    }
  });
});

const CHANCE = 0.07;
const BY_MASS = 0.05;
/** ln of a load over the slack in per cent: bent, and rising. */
const law = (x: number) => 8 + 0.08 * (x - 8) + 0.004 * (x - 8) ** 2;
const level95 = (x: number) => Math.exp(law(x) + normalQuantile(0.95) * Math.hypot(CHANCE, BY_MASS));

function madeUpSweep(seed: number, limit?: number): Swept {
  const chance = seededRandom(seed);
  return swept(
    nine,
    [slack],
    { what: { kind: "load", part: "leash" }, whatIfs: [fall], seed, ...(limit === undefined ? {} : { limit }) },
    ({ draw }, [x]) => {
      const u = Math.log(draw.mass ?? 1) / logSpread(0.1);
      const load = Math.exp(law(x!) + BY_MASS * u + CHANCE * chance.normal());
      return { run: () => ({ loads: { leash: load } }) };
    },
  );
}

describe("a crossing", () => {
  it("lies in its 95 % interval in about so many of many sweeps of a known law", () => {
    const [truth, times] = [9.4, 120];
    let [inside, width] = [0, 0];
    for (let seed = 1; seed <= times; seed++) {
      const [found] = madeUpSweep(seed, level95(truth)).limits;
      const [crossing] = found!.crossings;
      expect(crossing?.kept).toBe("below");
      const { low = 2, high = 14 } = crossing!;
      if (low <= truth && truth <= high) inside++;
      width += (high - low) / times;
    }
    // 95 % of 120, less or more two standard deviations of the count; narrow enough to be of use.
    expect(inside / times).toBeGreaterThan(0.91);
    expect(width).toBeLessThan(2.5);
  });

  it("is named with what governs, and the points rest on each other", () => {
    const { limits, points, misfit } = madeUpSweep(7, level95(9.4));
    expect(limits[0]!.crossings[0]!.governing.key).toBe("fall@0.5");
    for (const { curve, own, run } of points) {
      expect(curve!.high / curve!.low).toBeLessThan(own!.high / own!.low);
      expect(run!.draw).toMatch(/^fall@0\.5#\d+$/);
    }
    expect(misfit).toBeLessThan(3);
  });

  it("is not found where there is none, and then it is said which side of the limit all lies", () => {
    const [above] = madeUpSweep(3, level95(40)).limits;
    expect(above).toMatchObject({ crossings: [], throughout: { keeps: true, sure: true } });
    const [below] = madeUpSweep(3, 100).limits;
    expect(below).toMatchObject({ crossings: [], throughout: { keeps: false, sure: true } });
  });

  it("of a law with a step is told with a wider band and the misfit, not with a sure wrong one", () => {
    const chance = seededRandom(5);
    const { misfit, points } = swept(
      nine,
      [slack],
      { what: { kind: "load", part: "leash" }, whatIfs: [fall] },
      (_, [x]) => ({
        run: () => ({ loads: { leash: (x! > 9 ? 9000 : 5000) * Math.exp(0.02 * chance.normal()) } }),
      }),
    );
    expect(misfit).toBeGreaterThan(3);
    for (const { curve, own } of points) expect(curve!.high).toBeGreaterThan(0.98 * own!.low);
  });

  it("of connections is a number of them: from so many on", () => {
    const knob = knobOf("connections=0..5");
    const found = pointsOver(["connections=0..5"], 6);
    const chance = seededRandom(11);
    const { limits } = swept(found, [knob], { what: { kind: "margin" }, whatIfs: [fall] }, (_, [x]) => ({
      share: (part) => (part === "leash" ? (x! >= 3 ? 0.35 : 0.6) * Math.exp(0.03 * chance.normal()) : 0.05),
    }));
    expect(limits[0]!.crossings).toMatchObject([
      { kept: "above", at: 3, low: 3, high: 3, governing: { part: "leash", class: "expected" } },
    ]);
  });

  it("over months comes from strengths alone", () => {
    const knob = knobOf("months=0..24", { ...context, dated: true });
    const found = pointsOver(["months=0..24"], 5);
    const main = found.points.map(({ strengths }) => strengths.parts.find(({ id }) => id === "main")!.strength5);
    // The load is half of what the line holds in the middle of the time.
    const load = main[2]! / 2 / Math.exp(1.645 * 0.05);
    const chance = seededRandom(2);
    const { limits, runs } = swept(found, [knob], { what: { kind: "margin" }, whatIfs: [fall] }, () => {
      const each = load * Math.exp(0.05 * chance.normal());
      const at = Float32Array.from({ length: 24 }, (_, i) => (i + 0.5) / 24);
      const [line, none] = [new Float32Array(24).fill(each), new Float32Array(24)];
      return { run: () => ({ loads: {}, webbing: { main: { at, peak: line }, backup: { at, peak: none } } }) };
    });
    const crossing = limits[0]!.crossings.find(({ governing }) => governing.part === "main");
    expect(crossing).toMatchObject({ kept: "below" });
    expect(crossing!.at).toBeGreaterThan(2);
    expect(crossing!.at).toBeLessThan(20);
    expect(runs).toBe(48);
  });
});

describe("a sweep", () => {
  it("looks at the ends and the middle, keeps the worst few events, and draws others at every point", () => {
    const ordered: { key: string; x: number }[] = [];
    const { events, looked, runs } = swept(nine, [slack], { what: { kind: "drop" }, size: "quick" }, (order, [x]) => {
      ordered.push({ key: JSON.stringify([order.event, order.draw]), x: x! });
      return { run: ({ event }) => ({ drop: event.kind === "mainFails" ? 9 + x! : 4 }) };
    });
    expect(events.length).toBe(4);
    expect(looked).toBeGreaterThan(4);
    expect(events.every(({ event }) => event.kind === "mainFails" || event.kind === "leashFall")).toBe(true);
    expect(events[0]!.event.kind).toBe("mainFails");
    expect(runs).toBe(ordered.length);
    const drawn = ordered.filter(({ key }) => key.includes("mass")).map(({ key }) => key);
    expect(new Set(drawn).size).toBe(drawn.length);
  });

  it("of a rig without ground has no height to tell", () => {
    const withoutHeight = () =>
      swept(nine, [slack], { what: { kind: "height" }, whatIfs: [fall] }, () => ({
        run: () => {
          const none: Record<string, unknown> = { feetClearance: undefined };
          return none;
        },
      }));
    expect(withoutHeight).toThrow(NothingSwept);
  });

  it("counts runs that gave no numbers, and goes on with the others", () => {
    let count = 0;
    const { points } = swept(
      nine,
      [slack],
      { what: { kind: "drop" }, whatIfs: [fall] },
      () => ({}),
      () => count++ % 8 === 3,
    );
    for (const { failed, runs, curve } of points) {
      expect([failed, runs]).toEqual([1, 7]);
      expect(curve).toBeDefined();
    }
  });

  it("names events that gave no number when all were looked at: one of them may govern", () => {
    const isLeg = ({ event }: { readonly event: { readonly kind: string } }) => event.kind === "legFails";
    const all = swept(nine, [slack], { what: { kind: "drop" }, size: "quick" }, () => ({}));
    const some = swept(nine, [slack], { what: { kind: "drop" }, size: "quick" }, () => ({}), isLeg);
    expect(all.silent).toEqual([]);
    expect(some.silent.length).toBeGreaterThan(0);
    expect(some.silent.every(isLeg)).toBe(true);
    expect(some.events.some(isLeg)).toBe(false);
    expect(some.looked).toBe(all.looked);
  });

  it("over two numbers makes a map with the region that keeps a limit", () => {
    const asked = ["backup.slack=2%..14%", "walker.mass=60kg..120kg"];
    const found = pointsOver(asked, 5);
    const chance = seededRandom(4);
    // 95 % of the loads stay under the limit where slack + (mass − 60) ÷ 10 is below 8, about.
    const load = ([x, m]: readonly number[]) => 4000 * Math.exp(0.05 * (x! + (m! - 60) / 10));
    const { region, points } = swept(
      found,
      asked.map((one) => knobOf(one)),
      { what: { kind: "load", part: "leash" }, whatIfs: [fall], limit: load([8, 60]) * Math.exp(1.645 * 0.03) },
      (_, values) => ({ run: () => ({ loads: { leash: load(values) * Math.exp(0.03 * chance.normal()) } }) }),
    );
    points.forEach(({ values: [x, m] }, i) => {
      const from = x! + (m! - 60) / 10 - 8;
      if (from < -2) expect(region!.states[i]).toBe("keeps");
      if (from > 2) expect(region!.states[i]).toBe("below");
    });
    const at60 = region!.outline.find(({ at }) => at === 60)!;
    expect(at60.kept).toHaveLength(1);
    // Kept with the whole 95 % band of eight draws a point: inside the true outline, by two and a half percentage points at most.
    for (const [at, outline] of [
      [60, 8],
      [90, 5],
    ] as const) {
      const inside = outline - region!.outline.find((one) => one.at === at)!.kept[0]!.to;
      expect(inside).toBeGreaterThan(-0.3);
      expect(inside).toBeLessThan(2.5);
    }
  });
});
