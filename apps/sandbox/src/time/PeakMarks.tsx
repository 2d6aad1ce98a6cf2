import { PEAK_WORDS_SIZE, type PeakMark, type PlotFrame, wordedPeaks } from "@secondline/figures/time";
import styles from "./Plot.module.css";
import { axisTextWidth } from "./textWidth.ts";

/** Marks with their values; where words would cover one another the smaller peak's go. Pressed through the plot. */
export function PeakMarks({ peaks, frame }: { readonly peaks: readonly PeakMark[]; readonly frame: PlotFrame }) {
  const worded = wordedPeaks(peaks, frame, axisTextWidth);
  return (
    <svg
      className={styles.peaks}
      style={{ left: frame.left, top: frame.top }}
      width={frame.width}
      height={frame.height}
      aria-hidden="true"
    >
      {peaks.map((peak) => (
        <g key={peak.key} data-faded={peak.faded} transform={`translate(${peak.x} ${peak.y})`} stroke={peak.colour}>
          <circle r={4} />
          {worded.has(peak.key) && (
            <text
              x={worded.get(peak.key) === "right" ? PEAK_WORDS_SIZE.gap : -PEAK_WORDS_SIZE.gap}
              y={-4}
              textAnchor={worded.get(peak.key) === "right" ? "start" : "end"}
              fill={peak.colour}
            >
              {peak.text}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}
