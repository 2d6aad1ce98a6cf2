import { type EventMark, eventRange, type TimeRange } from "@secondline/figures/time";
import { describe, expect, it } from "vitest";
import { timeRecording } from "../../figures/test/timeRecording.ts";
import { clockDoes } from "../src/playback/clockDoes.ts";
import { createPlaybackClock } from "../src/playback/playbackClock.ts";
import { stripDoes } from "../src/playback/stripActions.ts";
import type { KeyAction } from "../src/playback/timeKeys.ts";

const recording = timeRecording();
const { duration } = recording;

function strip() {
  const clock = createPlaybackClock({ duration, frameStep: 0.005, frames: null });
  const marks = [1, 2].map((time): EventMark => ({ key: `${time}`, time, label: "", sentence: "", rank: 1 }));
  const seen: { range: TimeRange; measure: number | null } = { range: { from: 0, to: duration }, measure: null };
  const does = (action: KeyAction) =>
    stripDoes(
      {
        clock,
        recording,
        marks,
        measure: seen.measure,
        setMeasure: (time) => {
          seen.measure = time;
        },
        setRange: (to) => {
          seen.range = to(seen.range);
        },
      },
      action,
    );
  return { clock, seen, does };
}

describe("the time strip", () => {
  it("goes from event to event, and on to the ends of the run", () => {
    const { clock, does } = strip();
    const times = ([1, 1, 1, -1, -1, -1] as const).map((direction) => {
      does({ do: "mark", direction });
      return clock.getSnapshot().time;
    });
    expect(times).toEqual([1, 2, duration, 2, 1, 0]);
  });

  it("repeats the event, or what lies between the two cursors, until it is told not to", () => {
    const { clock, does } = strip();
    does({ do: "loop" });
    expect(clock.getSnapshot().loop).toEqual(eventRange(recording));
    does({ do: "loop" });
    expect(clock.getSnapshot().loop).toBeNull();
    clock.seek(2);
    does({ do: "measure" });
    clock.seek(1.5);
    does({ do: "loop" });
    expect(clock.getSnapshot().loop).toEqual({ from: 1.5, to: 2 });
  });

  it("measures from where the cursor stands, and stops measuring by the same key", () => {
    const { clock, seen, does } = strip();
    clock.seek(1.25);
    does({ do: "measure" });
    expect(seen.measure).toBe(1.25);
    does({ do: "measure" });
    expect(seen.measure).toBeNull();
  });

  it("shows half as much about the cursor, and the whole run again", () => {
    const { clock, seen, does } = strip();
    clock.seek(2);
    does({ do: "zoom", direction: 1 });
    expect(seen.range.to - seen.range.from).toBeCloseTo(duration / 2, 9);
    does({ do: "fit" });
    expect(seen.range).toEqual({ from: 0, to: duration });
  });

  it("plays, steps and goes to either end by the clock alone, as where there is no strip", () => {
    const { clock, does } = strip();
    does({ do: "end" });
    expect(clock.getSnapshot().time).toBe(duration);
    expect(clockDoes(clock, { do: "start" })).toBe(true);
    expect(clock.getSnapshot().time).toBe(0);
    expect(clockDoes(clock, { do: "frame", direction: 1 })).toBe(true);
    expect(clock.getSnapshot().time).toBeCloseTo(0.005, 9);
    expect(clockDoes(clock, { do: "measure" })).toBe(false);
  });
});
