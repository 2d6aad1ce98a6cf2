import type { Rig } from "@secondline/rig";
import type { Chances, Probability } from "@secondline/scenarios";
import { englishChanceWords as chanceWords, worthARow } from "@secondline/words/chances";
import { sayChances } from "@secondline/words/page/chances";
import styles from "./chances.module.css";

interface BarProps {
  name: string;
  /** What kind of thing it is, beside the name. */
  kind?: string;
  chance: Probability;
  text: string;
  look: "part" | "input" | "strength" | "chance";
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
export function PartBars({ rig, chances }: { rig: Rig; chances: Chances }) {
  const shown = chances.parts.filter(worthARow);
  return (
    <>
      <ul className={styles.bars} aria-label={sayChances("chanceBars.chanceEachPart")}>
        {shown.map((part) => (
          <ChanceBar
            key={part.id}
            name={chanceWords.chancePart(rig, part)}
            chance={part.first}
            text={chanceWords.chanceRange(part.first)}
            look="part"
          />
        ))}
      </ul>
      <p className={styles.note}>
        {chanceWords.chanceRest(chances.parts)} {chanceWords.say("chance.brackets")}
      </p>
    </>
  );
}

const MOST_SHARES = 6;

/** Where the scatter of the margin comes from, of the part that is likeliest to go first. */
export function ShareBars({ rig, chances }: { rig: Rig; chances: Chances }) {
  const title = chanceWords.sharesTitle(rig, chances);
  return (
    <>
      <h4 className={styles.heading}>{title}</h4>
      <ul className={styles.bars} aria-label={title}>
        {chances.shares.sources.slice(0, MOST_SHARES).map((share) => (
          <ChanceBar
            key={chanceWords.shareName(share)}
            name={chanceWords.shareName(share)}
            kind={chanceWords.say(`chance.share.${share.kind}`)}
            chance={share.share}
            text={chanceWords.chanceShare(share)}
            look={share.kind}
          />
        ))}
      </ul>
    </>
  );
}
