import { type Chances, chanceText, type Probability } from "@secondline/scenarios";
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

/** Parts that are first less often are only counted [-]. */
const WORTH_A_BAR = 0.005;

/** Who goes first, likeliest first. */
export function PartBars({ chances }: { chances: Chances }) {
  const shown = chances.parts.filter((part) => part.first.value >= WORTH_A_BAR);
  const rest = chances.parts.length - shown.length;
  return (
    <>
      <ul className={styles.bars} aria-label="Chance of each part to go first">
        {shown.map(({ id, name, stretch, first }) => (
          <ChanceBar
            key={id}
            name={stretch && stretch.reason !== "webbing" ? `${name}, ${stretch.reason}` : name}
            chance={first}
            text={chanceText(first)}
            look="part"
          />
        ))}
      </ul>
      {rest > 0 && (
        <p className={styles.note}>
          {rest === 1 ? "One more part goes" : `${rest} more parts go`} first less often than once in 200. In brackets:
          95 % interval.
        </p>
      )}
    </>
  );
}

const MOST_SHARES = 6;
const KINDS = { input: "the fall", strength: "strength", surface: "the fit" } as const;

/** Where the scatter comes from. */
export function ShareBars({ chances }: { chances: Chances }) {
  if (chances.shares.length === 0) return null;
  return (
    <>
      <h4 className={styles.heading}>Where the scatter comes from</h4>
      <ul className={styles.bars} aria-label="Shares in the scatter of the least margin">
        {chances.shares.slice(0, MOST_SHARES).map(({ name, kind, first, distinguishable }) => (
          <ChanceBar
            key={name}
            name={name}
            kind={KINDS[kind]}
            chance={first}
            text={distinguishable ? chanceText(first) : "next to nothing alone"}
            look={kind}
          />
        ))}
      </ul>
    </>
  );
}
