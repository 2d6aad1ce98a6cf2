/** Places where main line and backup are held together, and the time until which each holds. */
import type { Recording } from "@secondline/engine";
import { nodeNear } from "../notes/partPlace.ts";

export interface Cuff {
  readonly tape: boolean;
  /** Node of the line that was asked for. */
  readonly node: number;
  /** Time of parting; infinite if it never parts [s]. */
  readonly until: number;
}

export function cuffsOf(recording: Recording, line: "main" | "backup" = "main"): readonly Cuff[] {
  return recording.connections.map(({ at, tape }) => {
    const part = tape ? "tape" : "connection";
    const parting = recording.events.find(
      (e) => e.kind === "break" && e.part === part && Math.abs((e.at ?? Number.NaN) - at) < 1e-3,
    );
    return { tape, node: nodeNear(recording, line, at), until: parting?.time ?? Number.POSITIVE_INFINITY };
  });
}
