import { beforeAll, describe, expect, it } from "vitest";
import { createWorkerRunner, InProcessRunner, type RunRequest } from "../src/index.ts";
import { buffersOf } from "../src/pool/transfer.ts";
import { bundleWorker, NodeWorker } from "./support/nodeWorker.ts";
import { assessed, rig } from "./support/rig.ts";

const request: RunRequest = {
  id: "one",
  assessed,
  whatIf: { kind: "leashFall", at: 0.5 },
  accuracy: "quick",
  duration: 2,
};

describe("a runner in its own thread", () => {
  it("runs a what-if and reports rising progress", async () => {
    const seen: number[] = [];
    // On the finest mesh: progress is told every few milliseconds, and a short run may be over by then.
    const answer = await new InProcessRunner().run({ ...request, accuracy: "fine" }, ({ done, doing }) => {
      seen.push(done);
      expect(doing).toEqual(request.whatIf);
    });
    if (!answer.ok) throw new Error(answer.message);
    expect(answer.value.outcome.ok).toBe(true);
    expect(answer.value.recording!.duration).toBeCloseTo(2, 2);
    expect(seen.length).toBeGreaterThan(0);
    expect([...seen].sort((a, b) => a - b)).toEqual(seen);
    expect(seen.at(-1)).toBeLessThanOrEqual(1);
  });

  it("hears a cancel in the middle of a run", async () => {
    const runner = new InProcessRunner();
    const answer = await runner.run({ ...request, accuracy: "fine" }, () => void runner.cancel("one"));
    expect(answer).toMatchObject({ ok: false, reason: "cancelled" });
  });

  it("hears a cancel that comes before the run has begun", async () => {
    const runner = new InProcessRunner();
    const answer = runner.run(request);
    await runner.cancel("one");
    expect(await answer).toMatchObject({ ok: false, reason: "cancelled" });
  });

  it("works out chances with rising progress, and hears a cancel in the middle of them", async () => {
    const asked = { id: "chances", assessed, whatIf: request.whatIf, runs: 16, accuracy: "quick" as const };
    const runner = new InProcessRunner();
    const seen: number[] = [];
    const whole = await runner.chances({ ...asked, spreads: { place: 0, damping: 0, slack: 0 } }, ({ done }) => {
      seen.push(done);
    });
    expect(whole.ok && whole.value.runs.done).toBe(16);
    expect([...seen].sort((a, b) => a - b)).toEqual(seen);
    const stopped = await runner.chances(asked, () => void runner.cancel("chances"));
    expect(stopped).toMatchObject({ ok: false, reason: "cancelled" });
  }, 240_000);

  it("sweeps, hears a cancel in the middle of it, and tells when too few values give a rig", async () => {
    const knob = { kind: "months", name: "months", from: 0, to: 24, unit: "", whole: false } as const;
    const rigs = [0, 24].map((value) => ({ values: [value], change: { months: `${value}` }, assessed, later: rig }));
    const asked = {
      id: "sweep",
      knobs: [knob],
      bad: [],
      options: { what: { kind: "drop" }, accuracy: "quick" },
    } as const;
    const runner = new InProcessRunner();
    const seen: { made?: number; expected?: number }[] = [];
    const stopped = await runner.sweep({ ...asked, rigs }, (progress) => {
      seen.push(progress);
      if (seen.length === 2) void runner.cancel("sweep");
    });
    expect(stopped).toMatchObject({ ok: false, reason: "cancelled" });
    expect(seen).toHaveLength(2);
    expect(seen[1]!.expected).toBeGreaterThan(seen[1]!.made!);
    expect(await runner.sweep({ ...asked, rigs: rigs.slice(1) })).toEqual({
      ok: true,
      value: { kind: "fewPoints", points: 1, bad: [] },
    });
  });

  it("runs two requests at a time, and cancels only the one meant", async () => {
    const runner = new InProcessRunner();
    const stays = runner.run({ ...request, id: "stays" });
    const goes = runner.run({ ...request, id: "goes", accuracy: "fine" });
    await runner.cancel("goes");
    expect(await goes).toMatchObject({ reason: "cancelled" });
    expect(await stays).toMatchObject({ ok: true });
  });

  it("answers with the reason when a rig cannot be studied at all", async () => {
    const broken = { ...assessed, rig: { ...rig, main: { ...rig.main, sections: [] } } };
    expect(await new InProcessRunner().study({ id: "x", assessed: broken, accuracy: "quick" })).toMatchObject({
      ok: false,
      reason: "failed",
    });
  });
});

describe("failures", () => {
  it("tell a program why: a what-if without chances, an option out of range", async () => {
    const runner = new InProcessRunner();
    const asked = { id: "chances", assessed, whatIf: request.whatIf };
    expect(await runner.chances({ ...asked, runs: 3 })).toMatchObject({ ok: false, code: "options" });
    const leg = { kind: "legFails", at: 0.5, anchor: "A", leg: 8, walker: "hanging" } as const;
    expect(await runner.chances({ ...asked, whatIf: leg })).toMatchObject({
      code: "noChances",
      why: { kind: "missing" },
    });
  });
});

describe("the same runner in a worker", () => {
  let path = "";
  beforeAll(async () => {
    path = await bundleWorker("realWorker");
  }, 60_000);

  it("gives the same numbers as in the caller's thread, and hands its arrays over", async () => {
    const runner = createWorkerRunner(() => new NodeWorker(path));
    const [there, here] = [await runner.run(request), await new InProcessRunner().run(request)];
    runner.dispose();
    if (!there.ok || !here.ok) throw new Error("a run failed");
    // Two bundles may round the last digit of a power differently, and a slack backup makes more of it.
    const [a, b] = [there.value.outcome, here.value.outcome];
    expect(a.key).toBe(b.key);
    expect(a.drop! / b.drop!).toBeCloseTo(1, 3);
    expect(a.peaks!.mainA / b.peaks!.mainA).toBeCloseTo(1, 2);
    expect(there.value.recording!.signals.leash).toHaveLength(here.value.recording!.signals.leash.length);
    expect(buffersOf(there.value).size).toBeGreaterThan(5);
  }, 30_000);
});

it("finds every buffer once, however deep", () => {
  const shared = new Float32Array(4);
  const value = { a: [shared, { b: shared.subarray(1) }], c: new Uint8Array(2), d: "text", e: null };
  expect([...buffersOf(value)]).toEqual([shared.buffer, value.c.buffer]);
});
