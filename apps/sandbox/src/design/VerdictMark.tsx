import type { PartVerdict } from "@secondline/scenarios";

/** Filled for what is said of a rig or part; an outline alone where nothing is said yet. */
const SHAPES: Readonly<Record<PartVerdict, string>> = {
  holds: "M8 1.5a6.5 6.5 0 1 0 0 13 6.5 6.5 0 0 0 0-13z",
  thin: "M8 1.2 15.2 14H.8z",
  fails: "M5.2 1h5.6L15 5.2v5.6L10.8 15H5.2L1 10.8V5.2z",
  open: "M2.2 2.2h11.6v11.6H2.2z",
  notLoaded: "M2.2 2.2h11.6v11.6H2.2z",
};
const INNER: Readonly<Record<PartVerdict, string>> = {
  holds: "M4.8 8.2l2.3 2.3 4.2-4.8",
  thin: "M8 5.5v4.2M8 11.8v.2",
  fails: "M5.4 5.4l5.2 5.2M10.6 5.4l-5.2 5.2",
  open: "M5 8h.01M8 8h.01M11 8h.01",
  notLoaded: "M5.2 8h5.6",
};

/** The CSS colour of a verdict: `ink` for its word, else for shapes and bars. */
export function verdictColour(verdict: PartVerdict, ink: "ink" | "fill" = "ink"): string {
  const name = verdict === "notLoaded" ? "open" : verdict;
  return `var(--${name}${ink === "ink" ? "-ink" : ""})`;
}

/** Shape and colour of a verdict. The word stands beside it in text, so it is hidden from screen readers. */
export function VerdictMark({ verdict, size = 16 }: { verdict: PartVerdict; size?: number }) {
  const isSaid = verdict !== "open" && verdict !== "notLoaded";
  const colour = verdictColour(verdict, "fill");
  const inside = verdict === "thin" ? "#1d2226" : isSaid ? "var(--paper)" : colour;
  return (
    <svg width={size} height={size} viewBox="0 0 16 16" aria-hidden="true" style={{ flex: "none" }}>
      <path d={SHAPES[verdict]} fill={isSaid ? colour : "none"} stroke={isSaid ? "none" : colour} strokeWidth="1.5" />
      <path
        d={INNER[verdict]}
        fill="none"
        stroke={inside}
        strokeWidth="1.8"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
