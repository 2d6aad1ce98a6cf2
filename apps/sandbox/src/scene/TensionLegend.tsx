import { scaleEnd, tensionGradient, tensionTable } from "@secondline/figures/scene";
import { quantity } from "@secondline/words";
import { sayPage } from "@secondline/words/page/page";
import { useMemo } from "react";
import type { Theme } from "../design/palette.ts";
import styles from "./scene.module.css";

interface TensionLegendProps {
  readonly theme: Theme;
  /** Largest tension of the run [N]. */
  readonly largest: number;
  readonly strengthKN?: number | undefined;
  readonly hasBackup: boolean;
  /** The run before is drawn too. */
  readonly hasPrevious?: boolean;
}

/** The tension scale in kN with what 95 % of such webbing hold on it, and how the two lines are told apart. */
export function TensionLegend({ theme, largest, strengthKN, hasBackup, hasPrevious = false }: TensionLegendProps) {
  const gradient = useMemo(() => tensionGradient(tensionTable(theme)), [theme]);
  const end = scaleEnd(largest) / 1000;
  const inside = strengthKN !== undefined && strengthKN <= end;
  return (
    <div className={styles.legend} data-legend>
      <div className={styles.lines}>
        <span className={styles.line}>
          <svg width="34" height="8" aria-hidden="true">
            <path d="M0 4H34" stroke="currentColor" strokeWidth="4" />
          </svg>
          {sayPage("tensionLegend.mainLine")}
        </span>
        {hasBackup && (
          <span className={styles.line}>
            <svg width="34" height="8" aria-hidden="true">
              <path d="M0 4H34" stroke="currentColor" strokeWidth="1" />
              <path d="M0 4H34" stroke="currentColor" strokeWidth="4" strokeDasharray="8 5" />
            </svg>
            {sayPage("tensionLegend.backup")}
          </span>
        )}
        {hasPrevious && (
          <span className={styles.line}>
            <svg width="34" height="8" aria-hidden="true">
              <path className={styles.previous} d="M0 4H34" />
            </svg>
            {sayPage("tensionLegend.runBefore")}
          </span>
        )}
      </div>
      <div className={styles.scale}>
        <div className={styles.bar} style={{ background: gradient }}>
          {inside && <i className={styles.strength} style={{ left: `${(100 * strengthKN) / end}%` }} />}
        </div>
        {strengthKN !== undefined && !inside && <i className={styles.beyond} aria-hidden="true" />}
      </div>
      <div className={styles.ticks}>
        <span>0</span>
        <span>{tickWords(end / 2)}</span>
        <span>
          {tickWords(end)}
          {" kN"}
        </span>
      </div>
      {strengthKN !== undefined && (
        <p className={styles.strengthWords}>
          {sayPage("tensionLegend.strength5", {
            strength: quantity.strength(1000 * strengthKN),
            mark: inside ? "" : " →",
          })}
        </p>
      )}
    </div>
  );
}

/** Marks of a scale, which are round. */
function tickWords(kN: number): string {
  return String(Number(kN.toPrecision(3)));
}
