/**
 * When a run may end. A walker who was caught may slide down the slope of the line that caught, past a connection, into the next bay,
 * and fall on: seconds after the catch. So a run ends once two low points in a row say that the worst is over, or once nothing holds
 * the walker any more. Where a line has parted, a ring beside a connection may still slip past it, swings later: a run waits as long as
 * the ring moves far enough for that. How often this ends a run too early was counted: docs/decisions/0007-end-of-a-run.md.
 */
import { SIGNALS, type Simulation } from "@secondline/engine";
import { fallsFreely, hangsStill, lowestReach, STILL_TIME } from "./fate.ts";

/** A walker who moves up by less than this has not turned [m]. */
export const LEAST_TURN_RISE = 0.05;
/** A ring that is further along a line than at the low point before is still sliding down [m]. */
const LEAST_SLIDE = 2;
/** A ring that moved along the backup by so much in its last swing may reach a connection, and slip past it, so many times as far away [-]. */
const SWINGS_TO_SLIP = 4;
/** A ring that is nearer to a connection than this may slip past it however little it moves [m of the backup]. */
const LEAST_SLIP_REACH = 0.5;
/** Share of the usual time [-]: bounces before it say nothing, for a ring sets out slowly down a slope. */
const EARLIEST_SETTLED_SHARE = 0.5;
/** A walker whose lowest point was less long ago is still on the way down [s]. */
const TIME_SINCE_LOWEST = 0.1;
/** After a failure, low points count only from so long after it [s]. */
const TIME_AFTER_FAILURE = 0.05;

/**
 * How much coarser a mesh will do [-] after a low point, where only the short elements of a tail that has whipped are given up; after
 * the high point that follows; and after one once the walker has settled but for a ring that may still slip. What it changes was counted:
 * docs/decisions/0008-mesh-after-the-catch.md.
 */
const COARSER = { low: 1, high: 1.5, calm: 2 } as const;
/** What comes off whips for so long: the longest tail with short elements, there and back, at the speed of a soft webbing's recoil [s]. */
const WHIP_TIME = 1.5;

/** What says in the events of a run that a line has parted. */
const FAILURES: readonly string[] = ["cut", "break"];
const LINES: readonly string[] = ["main", "backup"];

interface Low {
  readonly height: number;
  readonly ring: readonly [main: number, backup: number];
}

/** [s] */
export interface SettlingTimes {
  readonly from: number;
  readonly usual: number;
  readonly most: number;
}

/** Watches one run; to be asked now and then, some ten times a second or more often. */
export class Settling {
  readonly #run: Simulation;
  /** Natural lengths of main line and backup [m]. */
  readonly #lengths: readonly [main: number, backup: number];
  #events = 0;
  /** Low points count from this time on [s]. */
  #from: number;
  /** Nobody has settled before this time [s]. */
  readonly #least: number;
  readonly #reach: number;
  readonly #most: number;
  /** Where main line and backup are connected, along the backup [m]. */
  readonly #connections: readonly number[];
  /** Whether a line has parted: what it was connected to hangs at an angle there. */
  #parted = false;
  /** Where the ring was along the backup since the last low point [m]. */
  readonly #ringRange = { from: Number.POSITIVE_INFINITY, to: Number.NEGATIVE_INFINITY };
  /** Lowest of all low points so far [m]. */
  #deepest = Number.POSITIVE_INFINITY;
  #last: Low | undefined;
  #rising = false;
  #calm = false;
  /** How much coarser the mesh may be, by where the walker has turned [-]. */
  #coarser: number | undefined;
  /** Least or greatest height since the walker turned, and where the ring was then. */
  #turn: Low | undefined;

  /**
   * @param from time of what the event makes fail [s]: before it nothing is over
   * @param usual time that a deep drop and the way back take [s]
   * @param most time after which it is over [s], unless the walker is on the way to a new lowest point
   */
  constructor(run: Simulation, { from, usual, most }: SettlingTimes) {
    const { main, backup, joints } = run.model;
    this.#run = run;
    this.#connections = joints
      .filter(({ kind }) => kind === "connection")
      .map((joint) => backup!.fractions[joint.backup]! * backup!.naturalLength);
    this.#lengths = [main.naturalLength, backup?.naturalLength ?? 0];
    this.#from = from + TIME_AFTER_FAILURE;
    this.#least = from + EARLIEST_SETTLED_SHARE * usual;
    this.#reach = lowestReach(run.problem);
    this.#most = most;
  }

  over(): boolean {
    const { time, walkerHeight: height, ringAt: ring, lowestTime } = this.#run;
    this.#hearOfFailures(time);
    if (time < this.#from) return false;
    if (this.#cameBackUp({ height, ring }) || this.#isLeftAlone(time)) return true;
    return time > this.#most && lowestTime < time - TIME_SINCE_LOWEST;
  }

  /** How much coarser the mesh may be from here on [-]; undefined: not at all. */
  coarser(): number | undefined {
    return this.#run.time < this.#from + WHIP_TIME ? undefined : this.#coarser;
  }

  /** What gives way begins it all anew. */
  #hearOfFailures(time: number): void {
    const { events } = this.#run;
    const since = events.slice(this.#events);
    this.#parted ||= since.some(({ kind, part }) => FAILURES.includes(kind) && LINES.includes(part));
    if (since.some(({ kind }) => kind !== "leashTaut")) {
      this.#from = Math.max(this.#from, time + TIME_AFTER_FAILURE);
      this.#last = undefined;
      this.#turn = undefined;
      this.#rising = false;
      this.#calm = false;
      this.#coarser = undefined;
    }
    this.#events = events.length;
  }

  /**
   * Whether the walker has just risen from a low point that is neither the deepest nor far along the line from the one before, nor
   * where the ring may still slip past a connection.
   */
  #cameBackUp(now: Low): boolean {
    this.#turn ??= now;
    // A high point is over soon: what it allows, it allows at once.
    if (this.#coarser !== undefined) this.#coarser = COARSER.low;
    this.#range(now);
    const up = now.height - this.#turn.height;
    if (this.#rising ? up > 0 : up < 0) this.#turn = now;
    else if (this.#rising && up < -LEAST_TURN_RISE) {
      this.#rising = false;
      this.#turn = now;
      if (this.#parted) this.#coarser = this.#calm ? COARSER.calm : COARSER.high;
    } else if (!this.#rising && up > LEAST_TURN_RISE) {
      const low = this.#turn;
      const last = this.#last;
      const calm = last !== undefined && low.height >= this.#deepest && this.#slid(last, low) < LEAST_SLIDE;
      this.#calm = calm;
      this.#coarser = COARSER.low;
      const over = calm && this.#run.time > this.#least && !this.#maySlip(low);
      this.#deepest = Math.min(this.#deepest, low.height);
      this.#last = low;
      this.#rising = true;
      this.#turn = now;
      this.#ringRange.from = Number.POSITIVE_INFINITY;
      this.#ringRange.to = Number.NEGATIVE_INFINITY;
      this.#range(low);
      return over;
    }
    return false;
  }

  #range({ ring: [, onBackup] }: Low): void {
    if (onBackup < 0) return;
    const at = onBackup * this.#lengths[1];
    this.#ringRange.from = Math.min(this.#ringRange.from, at);
    this.#ringRange.to = Math.max(this.#ringRange.to, at);
  }

  /** Whether a line has parted and the ring may reach a connection of the backup within a few swings like the last one. */
  #maySlip({ ring: [, onBackup] }: Low): boolean {
    if (!this.#parted || onBackup < 0) return false;
    const at = onBackup * this.#lengths[1];
    const { from, to } = this.#ringRange;
    const reach = Math.max(LEAST_SLIP_REACH, SWINGS_TO_SLIP * (to - from));
    return this.#connections.some((place) => Math.abs(place - at) < reach);
  }

  /** How far the ring went along the lines that it is on [m]. */
  #slid(from: Low, to: Low): number {
    const along = ([0, 1] as const).map((k) =>
      from.ring[k] < 0 || to.ring[k] < 0 ? 0 : Math.abs(to.ring[k] - from.ring[k]) * this.#lengths[k],
    );
    return Math.max(...along);
  }

  /** Nothing that the recorded heights show will change any more. */
  #isLeftAlone(time: number): boolean {
    const { channels, samples } = this.#run.recorder;
    // The walker's height comes after the signals.
    const heights = channels[SIGNALS.length]!.subarray(0, samples);
    if (time > this.#from + STILL_TIME && hangsStill(heights)) return true;
    return fallsFreely(heights, this.#reach);
  }
}
