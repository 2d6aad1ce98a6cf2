/** What goes on beside the open rig: layouts that are kept, runs that give way, a sketch, handles, chances of a state. */
import { readRig } from "@secondline/rig";
import type { RunnerService } from "@secondline/runner";
import { assessRig, type Outcome, whatIfKey } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import {
  asideRunner,
  type ChancesState,
  chancesInHand,
  handleAt,
  handlesOf,
  layoutRunner,
  MOST_LAYOUTS,
  nearestHandle,
  type Projection,
  type SideView,
  type Sketched,
  sketch,
  takeAsLayout,
  wordsBeside,
} from "../src/index.ts";
import { startKeeping } from "../src/layouts/keptLayouts.ts";
import { demoDocument } from "./demoDocument.ts";
import { fell } from "./handRunner.ts";

const read = readRig(demoDocument());
if (!read.ok) throw new Error(JSON.stringify(read.issues[0]));
const { rig } = read;

/** Delays that end when the test says so. */
function handClock() {
  const waiting = new Set<() => void>();
  return {
    waiting,
    later(_pause: number, action: () => void) {
      waiting.add(action);
      return () => void waiting.delete(action);
    },
    ring() {
      for (const action of [...waiting]) {
        waiting.delete(action);
        action();
      }
    },
  };
}

describe("layouts", () => {
  function kept(setItem: (key: string, text: string) => void) {
    const clock = handClock();
    const troubles: unknown[] = [];
    let changed: () => void = () => undefined;
    const layouts = {
      written: () => [],
      onChange: (listener: () => void) => {
        changed = listener;
        return () => undefined;
      },
    };
    const shelf = { getItem: () => null, setItem, removeItem: () => undefined };
    const flush = startKeeping(layouts, shelf, { later: clock.later, onTrouble: (error) => void troubles.push(error) });
    return { clock, troubles, flush, change: () => changed() };
  }

  it("are written once the changes have come to rest, or at once when the page goes", () => {
    let count = 0;
    const { clock, flush, change } = kept(() => void count++);
    for (let i = 0; i < 5; i++) change();
    expect([count, clock.waiting.size]).toEqual([0, 1]);
    clock.ring();
    expect(count).toBe(1);
    change();
    flush();
    expect([count, clock.waiting.size]).toEqual([2, 0]);
    flush();
    expect(count).toBe(2);
  });

  it("that cannot be kept are told once, and once more after they could be", () => {
    let full = true;
    const { clock, troubles, change } = kept(() => {
      if (full) throw new Error("full");
    });
    const write = () => {
      change();
      clock.ring();
    };
    write();
    write();
    expect(troubles).toHaveLength(1);
    full = false;
    write();
    full = true;
    write();
    expect(troubles).toHaveLength(2);
  });

  it("take a value of a sweep in beside them, which can be taken back; there is room for so many", () => {
    const told: { tone: string; action?: { run: () => void } }[] = [];
    const removed: string[] = [];
    const list = [{ id: "a" }];
    const layouts = {
      store: { getState: () => ({ layouts: list }) },
      add: () => {
        list.push({ id: `${list.length}` });
        return list.at(-1);
      },
      remove: (id: string) => void removed.push(id),
    } as never;
    const page = {
      tell: (one: never) => void told.push(one),
      look: () => undefined,
      announce: () => undefined,
    } as never;
    for (let i = 0; i < MOST_LAYOUTS; i++) takeAsLayout(layouts, demoDocument(), "6 % slack", page);
    expect(list).toHaveLength(MOST_LAYOUTS);
    expect(told.map(({ tone }) => tone)).toEqual([...Array(MOST_LAYOUTS - 1).fill("word"), "fault"]);
    told[0]!.action!.run();
    expect(removed).toEqual(["1"]);
  });

  it("run their fall before the eye and search for their verdict aside; both end when one is cancelled", async () => {
    const asked: string[] = [];
    const runner = (name: string) => ({
      run: async () => void asked.push(`${name} run`),
      study: async () => void asked.push(`${name} study`),
      cancel: async () => void asked.push(`${name} cancel`),
    });
    const one = layoutRunner(runner("eye") as never, runner("aside") as never);
    await one.run({} as never);
    await one.study({} as never);
    await one.cancel("1");
    expect(asked).toEqual(["eye run", "aside study", "eye cancel", "aside cancel"]);
  });
});

describe("a sketch of a rig", () => {
  function sketching(answer: ReturnType<typeof fell>) {
    const clock = handClock();
    const made: Sketched[] = [];
    const cancelled: string[] = [];
    let runs = 0;
    const runner = {
      run: async () => {
        runs += 1;
        return answer;
      },
      cancel: async (id: string) => void cancelled.push(id),
    };
    const services = { runner: runner as never, newId: () => "1", later: clock.later };
    const leave = sketch(rig, services, (one) => void made.push(one));
    const settled = () => new Promise((resolve) => setTimeout(resolve));
    return { clock, made, cancelled, leave, settled, runs: () => runs };
  }

  it("is made once the typing has come to rest", async () => {
    const { clock, made, settled, runs } = sketching(fell("at rest"));
    expect(runs()).toBe(0);
    clock.ring();
    await settled();
    expect(made).toMatchObject([{ rig, recording: { name: "at rest" } }]);
  });

  it("shows nothing that gives way, for it does not ask what holds", async () => {
    const { clock, made, settled } = sketching(fell("at rest", [{ kind: "break" }, { kind: "lowest" }]));
    clock.ring();
    await settled();
    expect(made).toMatchObject([{ recording: { events: [{ kind: "lowest" }] } }]);
  });

  it("that is left is not shown any more, made or not", async () => {
    const { clock, made, cancelled, leave, settled } = sketching(fell("late"));
    clock.ring();
    leave();
    await settled();
    expect([made, cancelled]).toEqual([[], ["1"]]);
  });
});

describe("handles in a drawing from the side", () => {
  const side: SideView = {
    site: { span: 50, rise: 0 },
    points: [
      [0, -1],
      [25, -25],
    ],
    connections: [10],
  };
  const projection = {
    px: (x: number) => 10 * x,
    py: (z: number) => -10 * z,
    lineAt: () => -2,
  } as unknown as Projection;
  const all = handlesOf(side, ["ground", "connection"]);

  it("lie on the ground, and for connections on the line where it hangs", () => {
    expect(all.map((one) => handleAt(side, one, projection))).toEqual([
      [0, 10],
      [250, 250],
      [100, 20],
    ]);
  });

  it("are taken by the nearest one within reach, with how far the hand is off it", () => {
    expect(nearestHandle(side, all, projection, [95, 25])).toMatchObject({
      held: { kind: "connection" },
      dx: 5,
      dy: -5,
    });
    expect(nearestHandle(side, all, projection, [180, 180])).toBeUndefined();
    expect(nearestHandle(side, [], projection, [0, 0])).toBeUndefined();
  });

  it("have their words within the drawing, above them where there is room and below where there is none", () => {
    const drawing = { ...projection, width: 400, height: 300 } as Projection;
    const words = (at: readonly [number, number]) => wordsBeside("10 m, 4 m under the line", at, drawing);
    for (const x of [0, 200, 400]) {
      const { left, width } = words([x, 150]);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + width).toBeLessThanOrEqual(400);
    }
    expect(words([200, 150]).top).toBeLessThan(150);
    expect(words([200, 10]).top).toBeGreaterThan(10);
  });

  it("are none on a profile of very many points", () => {
    const points = Array.from({ length: 5000 }, (_, i) => [i / 100, -1] as const);
    expect(handlesOf({ ...side, points }, ["ground"])).toEqual([]);
  });
});

describe("chances of the current state", () => {
  const fall = { kind: "leashFall", at: 0.5 } as const;
  const outcome = {
    whatIfs: [{ whatIf: fall, key: whatIfKey(fall), ok: true, counts: true, gaveWay: [] }],
    parts: [],
    reasons: [],
  } as unknown as Outcome;
  const assessed = assessRig(rig);
  const found = { key: "now", spreads: {}, chances: { rigName: rig.name }, assessed };
  const hand = (state: object, key = "now") =>
    chancesInHand(
      { spreads: found.spreads, whatIf: undefined, found, ...state } as unknown as ChancesState,
      { assessed, key },
      outcome,
    );

  it("are stale once the state or a spread is another one", () => {
    expect(hand({}).stale).toBe(false);
    expect(hand({}, "later").stale).toBe(true);
    expect(hand({ spreads: { mass: "10" } }).stale).toBe(true);
  });

  it("of another rig say nothing of this one", () => {
    const other = { ...found, chances: { rigName: "another" } };
    expect(hand({ found: other })).toMatchObject({ found: undefined, stale: false });
  });

  it("cannot be worked out while a spread cannot be read", () => {
    expect(hand({}).faulty).toBe(false);
    expect(hand({ spreads: { mass: "?" } }).faulty).toBe(true);
  });
});

describe("what gives way to the open rig", () => {
  it("asks the same runner, in the background, under ids of its own", async () => {
    const asked: object[] = [];
    const runner = new Proxy({} as RunnerService, {
      get: (_, verb) => async (given: unknown) =>
        void asked.push(typeof given === "object" ? { verb, ...given } : { verb, given }),
    });
    const aside = asideRunner(runner);
    await aside.study({ id: "7" } as never);
    await aside.run({ id: "8" } as never);
    await aside.cancel("7");
    await aside.pause("8");
    await aside.setJobs(2);
    expect(asked).toEqual([
      { verb: "study", id: "side 7", background: true },
      { verb: "run", id: "side 8", background: true },
      { verb: "cancel", given: "side 7" },
      { verb: "pause", given: "side 8" },
      { verb: "setJobs", given: 2 },
    ]);
  });
});
