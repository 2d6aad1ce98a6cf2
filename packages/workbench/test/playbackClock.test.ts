import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import { createPlaybackClock, type FrameSource, SEEK_SIZES, SPEEDS } from "../src/playback/playbackClock.ts";
import { throttled } from "../src/playback/throttled.ts";

const still = (duration: number, frameStep = 0.005) => createPlaybackClock({ duration, frameStep, frames: null });

function manualFrames(): FrameSource & {
  readonly run: (milliseconds: number) => void;
  readonly waiting: () => number;
} {
  const waiting = new Map<number, (milliseconds: number) => void>();
  let next = 1;
  return {
    request(callback) {
      waiting.set(next, callback);
      return next++;
    },
    cancel: (handle) => waiting.delete(handle),
    run(milliseconds) {
      const due = [...waiting.values()];
      waiting.clear();
      for (const callback of due) callback(milliseconds);
    },
    waiting: () => waiting.size,
  };
}

describe("playback clock", () => {
  it("plays at its speed and stops at the end of the run", () => {
    const clock = still(2);
    clock.setSpeed(1 / 2);
    clock.play();
    clock.tick(1);
    expect(clock.getSnapshot()).toMatchObject({ time: 0.5, playing: true });
    clock.tick(10);
    expect(clock.getSnapshot()).toMatchObject({ time: 2, playing: false });
  });

  it("starts again from the beginning when played at the end", () => {
    const clock = still(2);
    clock.seek(2);
    clock.play();
    expect(clock.getSnapshot()).toMatchObject({ time: 0, playing: true });
  });

  it("does not move while paused", () => {
    const clock = still(2);
    clock.tick(1);
    expect(clock.getSnapshot().time).toBe(0);
  });

  it("goes around the loop and keeps what was left over", () => {
    const clock = still(5);
    clock.setSpeed(1);
    clock.setLoop({ from: 1, to: 2 });
    clock.seek(1.5);
    clock.play();
    clock.tick(0.75);
    expect(clock.getSnapshot().time).toBeCloseTo(1.25, 12);
    expect(clock.getSnapshot().playing).toBe(true);
  });

  it("runs into a loop that lies ahead, and enters one left behind at its start", () => {
    const clock = still(5);
    clock.setSpeed(1);
    clock.setLoop({ from: 2, to: 3 });
    clock.play();
    clock.tick(1);
    expect(clock.getSnapshot().time).toBe(1);
    clock.seek(4);
    clock.tick(0.1);
    expect(clock.getSnapshot().time).toBe(2);
  });

  it("refuses an empty loop and orders a backward one", () => {
    const clock = still(5);
    clock.setLoop({ from: 6, to: 7 });
    expect(clock.getSnapshot().loop).toBeNull();
    clock.setLoop({ from: 3, to: -1 });
    expect(clock.getSnapshot().loop).toEqual({ from: 0, to: 3 });
  });

  it("keeps a step of one frame at every speed, and a step back undoes a step forward", () => {
    for (const speed of SPEEDS) {
      const clock = still(1);
      clock.setSpeed(speed);
      clock.seek(0.1);
      clock.stepFrame(1);
      expect(clock.getSnapshot().time).toBeCloseTo(0.105, 12);
      clock.stepFrame(-1);
      expect(clock.getSnapshot().time).toBeCloseTo(0.1, 12);
    }
  });

  it("steps through every frame of a run, there and back, without leaving one out", () => {
    const clock = still(1, 1 / 240);
    for (let frame = 1; frame <= 240; frame++) {
      clock.stepFrame(1);
      expect(clock.getSnapshot().time * 240).toBeCloseTo(frame, 6);
    }
    for (let frame = 239; frame >= 0; frame--) {
      clock.stepFrame(-1);
      expect(clock.getSnapshot().time * 240).toBeCloseTo(frame, 6);
    }
  });

  it("seeks in three sizes", () => {
    const clock = still(5);
    clock.seek(2);
    clock.seekBy("coarse", 1);
    clock.seekBy("medium", -1);
    clock.seekBy("fine", 1);
    expect(clock.getSnapshot().time).toBeCloseTo(2 + SEEK_SIZES.coarse - SEEK_SIZES.medium + SEEK_SIZES.fine, 12);
  });

  it("stays inside the run whatever it is told", () => {
    const duration = fc.double({ min: 0, max: 30, noNaN: true });
    const anyTime = fc.double();
    const action = fc.oneof(
      anyTime.map((t) => (c: ReturnType<typeof still>) => c.seek(t)),
      anyTime.map((t) => (c: ReturnType<typeof still>) => c.tick(t)),
      fc.tuple(anyTime, anyTime).map(
        ([from, to]) =>
          (c: ReturnType<typeof still>) =>
            c.setLoop({ from, to }),
      ),
      fc.constant((c: ReturnType<typeof still>) => c.play()),
      fc.constant((c: ReturnType<typeof still>) => c.stepFrame(1)),
      fc.constant((c: ReturnType<typeof still>) => c.stepFrame(-1)),
      duration.map((d) => (c: ReturnType<typeof still>) => c.setRun({ duration: d })),
    );
    fc.assert(
      fc.property(duration, fc.array(action, { maxLength: 30 }), (length, actions) => {
        const clock = still(length);
        for (const act of actions) {
          act(clock);
          const { time, duration: end, loop } = clock.getSnapshot();
          expect(time).toBeGreaterThanOrEqual(0);
          expect(time).toBeLessThanOrEqual(end);
          if (loop !== null) {
            expect(loop.from).toBeLessThan(loop.to);
            expect(loop.from).toBeGreaterThanOrEqual(0);
            expect(loop.to).toBeLessThanOrEqual(end);
          }
        }
      }),
      { seed: 20, numRuns: 300 },
    );
  });

  it("tells its listeners of changes only, and gives the same snapshot in between", () => {
    const clock = still(5);
    let calls = 0;
    const end = clock.subscribe(() => calls++);
    clock.seek(1);
    clock.seek(1);
    clock.pause();
    expect(calls).toBe(1);
    expect(clock.getSnapshot()).toBe(clock.getSnapshot());
    end();
    clock.seek(2);
    expect(calls).toBe(1);
  });

  it("asks for animation frames only while it plays", () => {
    const frames = manualFrames();
    const clock = createPlaybackClock({ duration: 5, frames, speed: 1 });
    expect(frames.waiting()).toBe(0);
    clock.play();
    expect(frames.waiting()).toBe(1);
    frames.run(1000);
    frames.run(1050);
    expect(clock.getSnapshot().time).toBeCloseTo(0.05, 12);
    clock.pause();
    expect(frames.waiting()).toBe(0);
  });

  it("does not jump over the event after the page was hidden", () => {
    const frames = manualFrames();
    const clock = createPlaybackClock({ duration: 60, frames, speed: 1 });
    clock.play();
    frames.run(1000);
    frames.run(31000);
    expect(clock.getSnapshot().time).toBeCloseTo(0.1, 12);
  });

  it("says which length it cannot take", () => {
    expect(() => still(Number.NaN)).toThrow(/duration is NaN/);
    expect(() => still(1, 0)).toThrow(/frameStep is 0/);
  });
});

describe("what follows the clock in words", () => {
  it("is renewed at once, then now and then, and once more after the last change", () => {
    vi.useFakeTimers();
    try {
      let count = 0;
      const { call, cancel } = throttled(() => void count++, 100);
      for (let i = 0; i < 5; i++) call();
      expect(count).toBe(1);
      vi.advanceTimersByTime(100);
      expect(count).toBe(2);
      vi.advanceTimersByTime(500);
      expect(count).toBe(2);
      call();
      call();
      expect(count).toBe(3);
      cancel();
      vi.advanceTimersByTime(500);
      expect(count).toBe(3);
    } finally {
      vi.useRealTimers();
    }
  });
});
