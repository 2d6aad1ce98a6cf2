import type { Verdict } from "@secondline/scenarios";

const SHAPES: Record<Verdict, string> = {
  holds: "M8 1.5a6.5 6.5 0 1 0 0 13 6.5 6.5 0 0 0 0-13z",
  thin: "M8 1.2 15.2 14H.8z",
  fails: "M5.2 1h5.6L15 5.2v5.6L10.8 15H5.2L1 10.8V5.2z",
};
const INNER: Record<Verdict, string> = {
  holds: "M4.8 8.2l2.3 2.3 4.2-4.8",
  thin: "M8 5.5v4.2M8 11.8v.2",
  fails: "M5.4 5.4l5.2 5.2M10.6 5.4l-5.2 5.2",
};

/** Shape and colour of a verdict. The word stands beside it in text, so it is hidden from screen readers. */
export function VerdictMark({ verdict, size = 16 }: { verdict: Verdict; size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 16 16" aria-hidden="true" style={{ flex: "none" }}>
      <path d={SHAPES[verdict]} fill={`var(--${verdict})`} />
      <path
        d={INNER[verdict]}
        fill="none"
        stroke={verdict === "thin" ? "#1d2226" : "var(--paper)"}
        strokeWidth="1.8"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
