import type { Recording, RunEvent } from "@secondline/engine";
import { type BreaksTold, type Moments, quantity, englishWords as words } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import { type PlotFrame, xOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";

/** A moment of the run worth going to. */
export interface EventMark {
  readonly key: string;
  /** [s] */
  readonly time: number;
  /** Words on the time axis. */
  readonly label: string;
  /** The whole story, for tooltips and for those who listen. */
  readonly sentence: string;
  /** Rank of the mark: if there is no room, lower ranks give way first. */
  readonly rank: number;
}

/** Marks of a run in the order of time. */
export function eventMarks(recording: Recording, told?: BreaksTold): readonly EventMark[] {
  const falling = endsFalling(recording);
  return eventGroups(recording).map((happening, index) => {
    const [{ time, kind, part }] = happening;
    return {
      key: `${kind}-${part}-${index}`,
      time,
      label: words.moment(happening, falling, told),
      sentence: `${words.momentText(happening, falling, told)}, ${when(happening)}`,
      rank: part === "tape" ? TAPE_RANK : EVENT_RANKS[kind],
    };
  });
}

/** One moment, or the first and the last of several. */
function when(happening: Moments): string {
  const first = happening[0].time;
  if (happening.length === 1) return quantity.seconds(first);
  const last = happening.at(-1)!.time;
  const decimals = last - first < 0.01 ? 3 : 2;
  return sayTime("eventMarks.span", { from: quantity.seconds(first, decimals), to: quantity.seconds(last, decimals) });
}

/** Whether the run ended before the walker had reached a lowest point. */
export function endsFalling(recording: Recording): boolean {
  const oneStep = 0.005;
  return (
    recording.walker.lowestTime >= recording.duration - oneStep && !recording.events.some((e) => e.kind === "ground")
  );
}

/** Like events no farther apart than this are told together [s]. */
const TOGETHER_TIME = 0.1;

function eventGroups(recording: Recording): readonly Moments[] {
  const found: RunEvent[][] = [];
  const events = recording.events.filter(({ time }) => time <= recording.duration).sort((a, b) => a.time - b.time);
  for (const event of events) {
    const like = found.findLast(([first]) => first!.kind === event.kind && first!.part === event.part);
    if (like && event.time - like.at(-1)!.time <= TOGETHER_TIME) like.push(event);
    else found.push([event]);
  }
  return found as unknown as readonly Moments[];
}

const EVENT_RANKS: Readonly<Record<RunEvent["kind"], number>> = {
  break: 7,
  ground: 7,
  cut: 6,
  lowest: 5,
  ringOff: 4,
  slip: 3,
  leashTaut: 2,
  letGo: 1,
};
/** Tapes are there to part. */
const TAPE_RANK = 2;

/** Nearest mark before (−1) or after (1) `time`; null when there is none. */
export function neighbouringMark(marks: readonly EventMark[], time: number, direction: -1 | 1): EventMark | null {
  // A clock that was sent to a mark stands there but for rounding. The search must not find that mark again.
  const tolerance = 1e-6;
  if (direction > 0) return marks.find((mark) => mark.time > time + tolerance) ?? null;
  return marks.findLast((mark) => mark.time < time - tolerance) ?? null;
}

/** The stretch in which the fall starts and is caught. It is repeated when somebody asks for the event. */
export function eventRange(recording: Recording): { readonly from: number; readonly to: number } {
  const timesOf = (...kinds: readonly RunEvent["kind"][]) =>
    recording.events.filter(({ kind }) => kinds.includes(kind)).map(({ time }) => time);
  const start = Math.min(...timesOf("cut", "letGo", "break"), recording.duration);
  const caught = recording.peaks.leash.cfc60Time;
  // A lowest point long after the leash's peak belongs to a later swing.
  const lowest = Math.min(recording.walker.lowestTime, caught + 1);
  const end = Math.max(caught, lowest, ...timesOf("break", "ground"));
  const from = Math.min(start, end);
  const margin = Math.max((end - from) * 0.15, 0.1);
  return { from: Math.max(from - margin, 0), to: Math.min(end + 2 * margin, recording.duration) };
}

/** How far from a mark a thumb may be and still mean it [px]. */
const THUMB_REACH = 24;

/** Time of the event that a press above the plot means: the nearest one; null when none is near [s]. */
export function markUnder(marks: readonly EventMark[], x: number, range: TimeRange, frame: PlotFrame): number | null {
  const distance = (mark: EventMark) => Math.abs(xOf(mark.time, range, frame) - x);
  const nearest = marks.reduce<EventMark | null>((best, m) => (best && distance(best) <= distance(m) ? best : m), null);
  return nearest && distance(nearest) <= THUMB_REACH ? nearest.time : null;
}
