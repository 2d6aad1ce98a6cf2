import type { Recording } from "@secondline/engine";

/** Largest force of a connection [N], and when [s]; connections have no trace. */
export interface ConnectionPeak {
  /** "connection 2", or "connection" when it is the only one. */
  readonly name: string;
  readonly force: number;
  readonly time: number;
}

/** Of the connections that ever pulled, from A to B. Tapes part at little load, in crowds, and are told of as events. */
export function connectionPeaks(recording: Recording): readonly ConnectionPeak[] {
  const connections = recording.connections.filter(({ tape }) => !tape);
  return connections
    .map(({ peak, time }, i) => ({
      name: connections.length > 1 ? `connection ${i + 1}` : "connection",
      force: peak,
      time,
    }))
    .filter(({ force }) => force > 0);
}
