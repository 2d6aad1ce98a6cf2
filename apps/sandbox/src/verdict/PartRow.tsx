import { Collapsible } from "@base-ui/react/collapsible";
import { formatRatio } from "@secondline/rig";
import type { Outcome, PartOutcome } from "@secondline/scenarios";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { MarginBar } from "./MarginBar.tsx";
import styles from "./PartRow.module.css";
import { Reasons } from "./Reasons.tsx";

interface Props {
  part: PartOutcome;
  outcome: Outcome;
  /** Before the last change of the rig, when comparing. */
  before: PartOutcome | undefined;
  open: boolean;
  onOpenChange: (open: boolean) => void;
}

/** One part: its verdict, its load against its strength, and behind it the reasons. */
export function PartRow({ part, outcome, before, open, onOpenChange }: Props) {
  const first = part.id === outcome.firstToFail;
  return (
    <li className={styles.item}>
      <Collapsible.Root open={open} onOpenChange={onOpenChange}>
        <Collapsible.Trigger className={styles.row}>
          <VerdictMark verdict={part.verdict} />
          <span className={styles.name} title={part.name}>
            {part.name}
          </span>
          <span className={styles.plot}>
            <MarginBar part={part} required={outcome.requiredFactor} />
          </span>
          <span className={styles.margin}>× {formatRatio(part.margin)}</span>
          <span className={styles.word} style={{ color: `var(--${part.verdict}-ink)` }}>
            {part.parts ? "parted" : part.verdict}
          </span>
          {first && <em className={styles.first}>first to fail</em>}
        </Collapsible.Trigger>
        {before && <Change before={before} now={part} />}
        <Collapsible.Panel>
          <Reasons part={part} outcome={outcome} />
        </Collapsible.Panel>
      </Collapsible.Root>
    </li>
  );
}

function Change({ before, now }: { before: PartOutcome; now: PartOutcome }) {
  if (formatRatio(before.margin) === formatRatio(now.margin)) return null;
  return (
    <p className={styles.change}>
      before: × {formatRatio(before.margin)}, {before.verdict}
    </p>
  );
}
