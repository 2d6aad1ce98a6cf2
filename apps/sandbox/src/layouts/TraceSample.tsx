import type { LayoutLook } from "@secondline/figures/time";

/** A short piece of a layout's trace, as it is drawn in the plot. */
export function TraceSample({ look }: { look: LayoutLook }) {
  return (
    <svg width="28" height="8" viewBox="0 0 28 8" aria-hidden="true" style={{ verticalAlign: "middle" }}>
      <path d="M0 4H28" stroke={look.css} strokeWidth="2.25" strokeDasharray={look.dash.join(" ")} />
    </svg>
  );
}
