/** Ground and connections moved by hand: what a hand can do to them, and what it cannot. */
import { readRig } from "@secondline/rig";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Answers,
  groundFault,
  handStep,
  type Point,
  pointReachOf,
  rigFrom,
  sideOf,
  stretched,
  withAnswer,
  withConnection,
  withDrawnConnections,
  withDrawnGround,
  withoutPoint,
  withPoint,
  withPointAt,
  withProfile,
} from "../src/index.ts";

const SITE = { span: 50, rise: 0 };
const VALLEY: readonly Point[] = [
  [0, -1],
  [25, -25],
  [50, -1],
];
const move = (index: number, to: Point, step = 0.5) =>
  withPoint(VALLEY, index, to, { site: SITE, step: { x: step, z: step } })[index];

describe("a point of the ground", () => {
  it("goes where the hand has it, in round steps", () => {
    expect(move(1, [12.3, -17.8])).toEqual([12.5, -18]);
    expect(move(1, [12.3, -17.8], 2)).toEqual([12, -18]);
    // Steps are as fine as the drawing shows them.
    expect([3, 6, 14, 40].map(handStep)).toEqual([2, 1, 0.5, 0.1]);
  });

  it("stops at its neighbours, and the outermost do not come in from the anchors", () => {
    expect(move(1, [70, -20])).toEqual([49.9, -20]);
    expect(move(0, [8, -2])).toEqual([0, -2]);
    expect(move(0, [-3, -2])).toEqual([-3, -2]);
    expect(move(2, [44, -2])).toEqual([50, -2]);
    expect(pointReachOf(VALLEY, 1, SITE)).toEqual([0.1, 49.9]);
  });

  it("as high as the line is told with its place and the line's height there", () => {
    const tilted = { span: 50, rise: 10 };
    expect(
      groundFault(
        [
          [0, -1],
          [25, 5],
          [50, 9],
        ],
        tilted,
      ),
    ).toEqual({ kind: "line", index: 1, x: 25, limit: 5 });
    expect(
      groundFault(
        [
          [0, -1],
          [25, 4.9],
          [50, 9],
        ],
        tilted,
      ),
    ).toBeUndefined();
    expect(
      groundFault(
        [
          [0, 0.5],
          [25, -9],
          [50, -1],
        ],
        SITE,
      ),
    ).toEqual({ kind: "anchorA", index: 0, x: 0, limit: 0 });
    expect(
      groundFault(
        [
          [0, 0],
          [25, -9],
          [60, 9],
        ],
        SITE,
      )?.kind,
    ).toBe("anchorB");
  });

  it("is refused exactly where the rig's own check refuses it", () => {
    const { document } = rigFrom({ span: "50 m", rise: "4 m", confirmed: ["ground"] });
    const height = fc.integer({ min: -40, max: 20 }).map((half) => half / 2);
    const profile = fc.tuple(height, height, height, height).map((z): readonly Point[] => {
      const x = [-5, 12, 31, 55];
      return z.map((one, i) => [x[i]!, one]);
    });
    fc.assert(
      fc.property(profile, (points) => {
        const read = readRig({ ...document, ground: points.map(([x, z]) => [`${x} m`, `${z} m`]) });
        expect(groundFault(points, { span: 50, rise: 4 }) === undefined).toBe(read.ok);
      }),
      { seed: 13, numRuns: 200 },
    );
  });

  it("more leaves the ground as it was; one less still covers the span", () => {
    expect(withPointAt(VALLEY, SITE, 10)).toEqual({
      points: [
        [0, -1],
        [10, -10.6],
        [25, -25],
        [50, -1],
      ],
      index: 1,
    });
    expect(withPointAt(VALLEY, SITE)?.points[1]).toEqual([12.5, -13]);
    expect(withPointAt(VALLEY, SITE, 25.05)).toBeUndefined();
    expect(withoutPoint(VALLEY, 1, SITE)).toEqual([
      [0, -1],
      [50, -1],
    ]);
    expect(withoutPoint(VALLEY, 0, SITE)).toBeUndefined();
    expect(
      withoutPoint(
        [
          [0, -1],
          [50, -1],
        ],
        0,
        SITE,
      ),
    ).toBeUndefined();
  });

  it("never lies lower for having been added", () => {
    const points: readonly Point[] = [
      [0, -1],
      [17.3, -11.17],
      [50, -2.9],
    ];
    for (const x of [3.33, 9.99, 20.01, 44.4]) {
      const added = withPointAt(points, SITE, x)!;
      const [[x0, z0], , [x1, z1]] = [added.index - 1, 0, added.index + 1].map((i) => added.points[i]!) as [
        Point,
        Point,
        Point,
      ];
      expect(added.points[added.index]![1]).toBeGreaterThanOrEqual(z0 + ((z1 - z0) * (x - x0)) / (x1 - x0) - 1e-9);
    }
  });

  it("goes along when the whole profile is drawn out to another span", () => {
    expect(stretched(VALLEY, 60)).toEqual([
      [0, -1],
      [30, -25],
      [60, -1],
    ]);
  });
});

describe("a connection", () => {
  it("is dragged by metres, and stops before the anchors and its neighbours", () => {
    const at = (to: number) => withConnection([10, 25, 40], 1, to, { span: 50, step: 0.5 })[1];
    expect([22.3, -4, 70].map(at)).toEqual([22.5, 10.5, 39.5]);
    expect(withConnection([10], 0, -4, { span: 50, step: 0.5 })).toEqual([0.5]);
  });
});

describe("a document seen from the side", () => {
  it("gives ground and connections in metres", () => {
    const { document } = rigFrom({ span: "60 m", connections: "12 m, 45 m" });
    const side = sideOf(document)!;
    expect(side.site).toEqual({ span: 60, rise: 0 });
    expect(side.points).toHaveLength(3);
    expect(side.connections.map((at) => Math.round(at))).toEqual([12, 45]);
  });

  it("is nothing while something of it cannot be read", () => {
    const { document } = rigFrom({});
    expect(sideOf({ ...document, span: "far" })).toBeUndefined();
    expect(sideOf({ ...document, ground: [["0 m", "-1 m"], ["50 m"]] })).toBeUndefined();
  });
});

describe("answers drawn by hand", () => {
  const isOpen = (answers: Answers, path: string) => rigFrom(answers).unconfirmed.includes(path);

  it("are not confirmed by moving one point of a guess, or one connection of the template", () => {
    const ground = withDrawnGround({}, VALLEY);
    expect(rigFrom(ground).rig?.ground).toEqual(VALLEY);
    expect(isOpen(ground, "ground")).toBe(true);
    expect(isOpen({ ...ground, confirmed: ["ground"] }, "ground")).toBe(false);
    const tied = withDrawnConnections({}, [14, 30, 45]);
    expect(tied.connections).toBe("14 m, 30 m, 45 m");
    expect(isOpen(tied, "backup.connections[0].at")).toBe(true);
    expect(isOpen(withAnswer(tied, "connections", "14 m"), "backup.connections[0].at")).toBe(false);
  });

  it("of what was somebody's own stay confirmed", () => {
    const file = withProfile({}, [
      ["0 m", "-1 m"],
      ["50 m", "-2 m"],
    ]);
    expect(isOpen(withDrawnGround(file, VALLEY), "ground")).toBe(false);
    const typed = withAnswer({}, "connections", "14 m");
    expect(isOpen(withDrawnConnections(typed, [15]), "backup.connections[0].at")).toBe(false);
    // Back to the guess, and drawn over it again.
    expect(isOpen(withDrawnGround(withProfile(file, undefined), VALLEY), "ground")).toBe(true);
  });
});
