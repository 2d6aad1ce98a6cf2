/** A hand in a drawing from the side, without a page. */
import { describe, expect, it } from "vitest";
import { createSideDesk, type Point, type SideHost, type SideView, sideInSight } from "../src/index.ts";

const VALLEY: SideView = {
  site: { span: 50, rise: 0 },
  points: [
    [0, -1],
    [25, -25],
    [50, -1],
  ],
  connections: [20, 30],
};
const GROUND = { kind: "ground", index: 1 } as const;
const NEAR = { perMetre: { x: 40, z: 40 } };

/** A desk over a document that takes every move over; `log` has what it was asked for. */
function handOn(start: SideView = VALLEY) {
  let side = start;
  const log: string[] = [];
  const host: SideHost = {
    ground(points, moved, group) {
      side = { ...side, points };
      log.push(`ground ${moved ?? "all"} ${group}`);
    },
    connection(metres, index, group) {
      side = { ...side, connections: metres };
      log.push(`connection ${index} ${group}`);
    },
    takeBack(group) {
      log.push(`back ${group}`);
      return true;
    },
    done: () => void log.push("done"),
  };
  const desk = createSideDesk(() => ({ side, host }));
  return { desk, log, side: () => side, seen: () => sideInSight(desk.store.getState(), side) };
}

describe("a drag", () => {
  it("shows the point where the hand has it, and writes it once, when it is let go", () => {
    const { desk, log, side, seen } = handOn();
    desk.drag(GROUND, 20, -20, NEAR);
    desk.drag(GROUND, 22, -18, NEAR);
    expect(seen().isHeld).toBe(true);
    expect(seen().shown.points[1]).toEqual([22, -18]);
    expect(side()).toBe(VALLEY);
    desk.drop();
    expect(side().points[1]).toEqual([22, -18]);
    expect(log).toEqual(["ground 1 drag ground 1", "done"]);
    expect(seen().isHeld).toBe(false);
  });

  it("that ends where no ground can be leaves the last place that could", () => {
    const { desk, side, seen } = handOn();
    desk.drag(GROUND, 25, -10, NEAR);
    desk.drag(GROUND, 25, 3, NEAR);
    expect(seen().fault).toBeDefined();
    expect(seen().told).not.toBe("");
    desk.drop();
    expect(side().points[1]).toEqual([25, -10]);
  });

  it("that never was anywhere it could be changes nothing", () => {
    const { desk, log, side } = handOn();
    desk.drag(GROUND, 25, 3, NEAR);
    desk.drop();
    expect(side()).toBe(VALLEY);
    expect(log).toEqual([]);
  });

  it("that is given up changes nothing, and says nothing any more", () => {
    const { desk, log, seen } = handOn();
    desk.drag(GROUND, 25, 3, NEAR);
    desk.cancel();
    expect(seen()).toMatchObject({ shown: VALLEY, isHeld: false, told: "", fault: undefined });
    desk.drop();
    expect(log).toEqual([]);
  });
});

describe("a press of an arrow key", () => {
  it("moves at once, from where the document has it by then", () => {
    const { desk, side } = handOn();
    desk.nudge(GROUND, 0, 0.5);
    desk.nudge(GROUND, 0, 0.5);
    expect(side().points[1]).toEqual([25, -24]);
    desk.nudge({ kind: "connection", index: 0 }, 0.5, 0);
    expect(side().connections).toEqual([20.5, 30]);
  });

  it("into the line is refused and told", () => {
    const high = { ...VALLEY, points: VALLEY.points.map(([x]): Point => [x, -0.2]) };
    const { desk, side, seen } = handOn(high);
    desk.nudge(GROUND, 0, 0.5);
    expect(side()).toBe(high);
    expect(seen().told).not.toBe("");
  });

  it("mends a profile that was wrong already, step by step", () => {
    const wrong = { ...VALLEY, points: [VALLEY.points[0]!, [25, 4] as const, VALLEY.points[2]!] };
    const { desk, side, seen } = handOn(wrong);
    expect(seen().fault).toBeDefined();
    desk.nudge(GROUND, 0, -0.5);
    expect(side().points[1]).toEqual([25, 3.5]);
  });
});

describe("points that come and go", () => {
  it("are chosen when they are new, and not any more when they are gone", () => {
    const { desk, side, seen } = handOn();
    desk.add();
    const { chosen } = seen();
    expect(side().points).toHaveLength(4);
    expect(chosen?.kind).toBe("ground");
    desk.remove(chosen!.index);
    expect(side().points).toEqual(VALLEY.points);
    expect(seen().chosen).toBeUndefined();
  });

  it("stay where the ground needs them", () => {
    const { desk, side, seen } = handOn();
    expect([0, 1, 2].map(desk.canRemove)).toEqual([false, true, false]);
    desk.remove(0);
    expect(side()).toBe(VALLEY);
    expect(seen().told).not.toBe("");
  });

  it("what is chosen is forgotten when the document has no such thing", () => {
    const { desk, side } = handOn();
    desk.choose({ kind: "connection", index: 1 });
    const state = desk.store.getState();
    expect(sideInSight(state, side()).chosen).toEqual({ kind: "connection", index: 1 });
    expect(sideInSight(state, { ...VALLEY, connections: [20] }).chosen).toBeUndefined();
  });
});
