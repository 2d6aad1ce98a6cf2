import type { PlotFrame } from "@secondline/figures/time";
import { sayDraws } from "@secondline/words/draws";
import { sayTime } from "@secondline/words/page/time";
import styles from "./Plot.module.css";

interface Props {
  readonly frame: PlotFrame;
  readonly rawBehind: boolean;
  readonly compared: boolean;
  /** Falls in the band behind a trace, where one is drawn. */
  readonly draws: number | undefined;
}

/** What the pale lines are; the others bear their names at their ends. */
export function PlotKey({ frame, rawBehind, compared, draws }: Props) {
  return (
    <ul className={styles.key} style={{ width: frame.gutter }}>
      {rawBehind && (
        <li>
          <KeyLine width={1} /> {sayTime("plotKey.thinRawSamples")}
        </li>
      )}
      {compared && (
        <li>
          <KeyLine width={4.5} /> {sayTime("plotKey.wideRunBefore")}
        </li>
      )}
      {draws !== undefined && (
        <li>
          <KeyLine width={8} /> {sayDraws("band.key", { count: draws })}
        </li>
      )}
    </ul>
  );
}

function KeyLine({ width }: { width: number }) {
  return (
    <svg width={18} height={10} aria-hidden="true">
      <path d="M0 5H18" stroke="currentColor" strokeWidth={width} opacity={0.45} />
    </svg>
  );
}
