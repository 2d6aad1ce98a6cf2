import { Collapsible } from "@base-ui/react/collapsible";
import type { PartVerdict } from "@secondline/scenarios";
import type { ReactNode } from "react";
import { Later } from "../design/Later.tsx";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import styles from "./PartRow.module.css";

interface Props {
  id: string;
  verdict: PartVerdict;
  title: string;
  /** It has no second. */
  single?: string | undefined;
  /** What carries no load has neither. */
  bar?: ReactNode;
  number?: string | undefined;
  word: string;
  hints: readonly string[];
  open: boolean;
  onOpenChange: (open: boolean) => void;
  /** Stands under the row, open or not. */
  below?: ReactNode;
  /** What comes when it is opened, as it is named in a sentence. */
  what: string;
  children: ReactNode;
}

/** A row of the verdict: mark, name, bar, number and word, and behind it the reasons. */
export function RowFrame(props: Props) {
  const { id, verdict, title, single, bar, number, word, hints, open, onOpenChange, below, what, children } = props;
  return (
    <li className={styles.item} data-part={id} data-verdict={verdict}>
      <Collapsible.Root open={open} onOpenChange={onOpenChange}>
        <Collapsible.Trigger className={bar ? styles.row : styles.bare}>
          <VerdictMark verdict={verdict} />
          <span className={styles.name} title={title}>
            <span>{title}</span>
            {single !== undefined && <em className={styles.single}> {single}</em>}
          </span>
          {bar && <span className={styles.plot}>{bar}</span>}
          {bar && <span className={styles.margin}>{number}</span>}
          <span className={styles.word} style={{ color: verdictColour(verdict) }}>
            {word}
          </span>
          {hints.length > 0 && <em className={styles.first}>{hints.join(" · ")}</em>}
        </Collapsible.Trigger>
        {below}
        <Collapsible.Panel>
          <Later what={what}>{children}</Later>
        </Collapsible.Panel>
      </Collapsible.Root>
    </li>
  );
}
