import {
  type Chances,
  chanceText,
  IN_BRACKETS,
  type Probability,
  partName,
  restText,
  SHARE_KINDS,
  shareText,
  worthARow,
} from "@secondline/scenarios";
import styles from "./chances.module.css";

interface BarProps {
  name: string;
  /** What kind of thing it is, beside the name. */
  kind?: string;
  chance: Probability;
  text: string;
  look: "part" | "input" | "strength" | "surface";
}

/** A chance as a bar on a line from 0 to 100 %, with the ends of its interval; the numbers stand above it. */
function ChanceBar({ name, kind, chance, text, look }: BarProps) {
  const at = (value: number) => `${100 * Math.min(1, Math.max(0, value))}%`;
  return (
    <li className={styles.bar}>
      <span className={styles.name}>
        {name}
        {kind && <span className={styles.soft}> · {kind}</span>}
      </span>
      <span className={styles.number}>{text}</span>
      <span className={styles.track} aria-hidden="true">
        <span className={`${styles.fill} ${styles[look]}`} style={{ width: at(chance.value) }} />
        <span
          className={styles.interval}
          style={{ left: at(chance.low), width: `calc(${at(chance.high)} - ${at(chance.low)})` }}
        />
      </span>
    </li>
  );
}

/** Who goes first, likeliest first. */
export function PartBars({ chances }: { chances: Chances }) {
  const shown = chances.parts.filter(worthARow);
  return (
    <>
      <ul className={styles.bars} aria-label="Chance of each part to go first">
        {shown.map((part) => (
          <ChanceBar
            key={part.id}
            name={partName(part)}
            chance={part.first}
            text={chanceText(part.first)}
            look="part"
          />
        ))}
      </ul>
      <p className={styles.note}>
        {restText(chances.parts)} {IN_BRACKETS}
      </p>
    </>
  );
}

const MOST_SHARES = 6;

/** Where the scatter comes from. */
export function ShareBars({ chances }: { chances: Chances }) {
  if (chances.shares.length === 0) return null;
  return (
    <>
      <h4 className={styles.heading}>Where the scatter comes from</h4>
      <ul className={styles.bars} aria-label="Shares in the scatter of the least margin">
        {chances.shares.slice(0, MOST_SHARES).map((share) => (
          <ChanceBar
            key={share.name}
            name={share.name}
            kind={SHARE_KINDS[share.kind]}
            chance={share.first}
            text={shareText(share)}
            look={share.kind}
          />
        ))}
      </ul>
    </>
  );
}
