/** Recordings are megabytes of typed arrays: they live here, outside of the store, which holds a version number only. */
import type { Recording } from "@secondline/engine";

export interface Recordings {
  readonly current: Recording | undefined;
  /** The run before, for comparison. */
  readonly previous: Recording | undefined;
}

export class RecordingShelf implements Recordings {
  current: Recording | undefined;
  previous: Recording | undefined;
  private readonly keepsPrevious: boolean;

  constructor(keepsPrevious: boolean) {
    this.keepsPrevious = keepsPrevious;
  }

  /** Puts a new recording on the shelf; the one before becomes `previous`, or is let go. Undefined: the run gave none to trust. */
  put(recording: Recording | undefined): void {
    if (this.current && this.keepsPrevious) this.previous = this.current;
    this.current = recording;
  }

  /** Lets both go: another rig is open. */
  clear(): void {
    this.current = undefined;
    this.previous = undefined;
  }
}
