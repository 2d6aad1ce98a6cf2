import { Unspoken } from "./Unspoken.tsx";

/** A shape for every kind of entry, 14 px across, about its middle. */
const SHAPES: Readonly<Record<string, string>> = {
  rigged: "M-6 5V-5M6 5V-5M-6-3Q0 4 6-3",
  moved: "M-6 0H5M1-4l4 4-4 4",
  putUp: "M0 6V-5M-4-1l4-4 4 4",
  takenDown: "M0-6V5M-4 1l4 4 4-4",
  retensioned: "M-6 0H6M-3-3l-3 3 3 3M3-3l3 3-3 3",
  falls: "M0-6v7M-3-2l3 3 3-3M-5 5H5",
  shade: "M-6 3a6 6 0 0 1 12 0zM0-6v1M-6-3l1 1M6-3l-1 1",
  wet: "M0-6c3 4 4 5 4 7a4 4 0 0 1-8 0c0-2 1-3 4-7z",
  damage: "M-5-5L5 5M5-5L-5 5",
  clamped: "M-6-4h12M-6 4h12M-3-4v8M3-4v8",
  sewn: "M-6 2l3-4 3 4 3-4 3 4",
  cutToLength: "M-5-5L4 4M5-5L-4 4M-4 4a2 2 0 1 0-2 2M4 4a2 2 0 1 1 2 2",
  hardFall: "M0-7v8M-3-2l3 3 3-3M-6 6l3-3 3 3 3-3 3 3",
  replaced: "M-5-1a5 5 0 0 1 9-2M5 1a5 5 0 0 1-9 2M4-6v3H1M-4 6V3h3",
};

export function EventMark({ event, x, y, strong }: { event: string; x: number; y: number; strong: boolean }) {
  return (
    <Unspoken transform={`translate(${x} ${y})`}>
      <circle
        r="11"
        fill={strong ? "var(--accent-wash)" : "var(--paper)"}
        stroke={strong ? "var(--accent)" : "var(--edge)"}
      />
      <path
        d={SHAPES[event] ?? "M-4 0H4"}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="1.5"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </Unspoken>
  );
}
