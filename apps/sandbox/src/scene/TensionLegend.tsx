import {
  LEGEND_SAMPLE_LENGTH,
  type LegendFacts,
  legendOf,
  tensionGradient,
  tensionTable,
} from "@secondline/figures/scene";
import { useMemo } from "react";
import type { Theme } from "../design/palette.ts";
import styles from "./scene.module.css";

/** The tension scale in kN with what 95 % of such webbing hold on it, and how the lines are told apart. */
export function TensionLegend({ theme, ...facts }: LegendFacts & { readonly theme: Theme }) {
  const gradient = useMemo(() => tensionGradient(tensionTable(theme)), [theme]);
  const { lines, marks, strength } = legendOf(facts);
  const isBeyond = strength && strength.share === undefined;
  return (
    <div className={styles.legend} data-legend>
      <div className={styles.lines}>
        {lines.map(({ name, strokes }) => (
          <span key={name} className={styles.line}>
            <svg width={LEGEND_SAMPLE_LENGTH} height="8" aria-hidden="true">
              {strokes.map(({ width, dash, isPrevious }) => (
                <path
                  key={width}
                  className={isPrevious ? styles.previous : undefined}
                  d={`M0 4H${LEGEND_SAMPLE_LENGTH}`}
                  stroke="currentColor"
                  strokeWidth={width}
                  strokeDasharray={dash.join(" ") || undefined}
                />
              ))}
            </svg>
            {name}
          </span>
        ))}
      </div>
      <div className={styles.scale}>
        <div className={styles.bar} style={{ background: gradient }}>
          {strength?.share !== undefined && (
            <i className={styles.strength} style={{ left: `${100 * strength.share}%` }} />
          )}
        </div>
        {isBeyond && <i className={styles.beyond} aria-hidden="true" />}
      </div>
      <div className={styles.ticks}>
        <span>0</span>
        <span>{marks[0]}</span>
        <span>
          {marks[1]}
          {" kN"}
        </span>
      </div>
      {strength && (
        <p className={styles.strengthWords}>
          {strength.text}
          {isBeyond && " →"}
        </p>
      )}
    </div>
  );
}
