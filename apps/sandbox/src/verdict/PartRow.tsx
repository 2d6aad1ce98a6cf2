import { Collapsible } from "@base-ui/react/collapsible";
import type { Outcome, PartOutcome, Rig } from "@secondline/scenarios";
import { sayPage } from "@secondline/words/page/page";
import { lazy } from "react";
import { Later } from "../design/Later.tsx";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import { quantity, words } from "../words.ts";
import { MarginBar } from "./MarginBar.tsx";
import styles from "./PartRow.module.css";

const Reasons = lazy(async () => ({ default: (await import("./Reasons.tsx")).Reasons }));

interface Props {
  part: PartOutcome;
  rig: Rig;
  outcome: Outcome;
  /** Everything has been looked at: which part is the first to be looked after is known. */
  isWhole: boolean;
  /** Before the last change of the rig, when comparing. */
  before: PartOutcome | undefined;
  open: boolean;
  onOpenChange: (open: boolean) => void;
}

const governingOf = (part: PartOutcome) => part.governing && part.byClass[part.governing];

/** One part: its verdict, its margin against what is required, and behind it the reasons. */
export function PartRow({ part, rig, outcome, isWhole, before, open, onOpenChange }: Props) {
  const title = words.partTitle(rig, part);
  const least = governingOf(part);
  const hints = [
    ...(least ? [words.band(least.demand, least.demandInterval)] : []),
    ...(isWhole && part.id === outcome.leastMargin ? [sayPage("partRow.nearestToRequired")] : []),
    ...(isWhole && part.id === outcome.firstToFail ? [sayPage("partRow.likeliestGoFirst")] : []),
  ];
  const isSingle = outcome.singles.some((one) => one.single && one.part === part.id);
  return (
    <li className={styles.item} data-part={part.id} data-verdict={part.verdict}>
      <Collapsible.Root open={open} onOpenChange={onOpenChange}>
        <Collapsible.Trigger className={least ? styles.row : styles.bare}>
          <VerdictMark verdict={part.verdict} />
          <span className={styles.name} title={title}>
            <span>{title}</span>
            {isSingle && <em className={styles.single}> {sayPage("partRow.noSecond")}</em>}
          </span>
          {least && (
            <>
              <span className={styles.plot}>
                <MarginBar of={least} verdict={part.verdict} />
              </span>
              <span className={styles.margin}>× {quantity.margin(least.margin)}</span>
            </>
          )}
          <span className={styles.word} style={{ color: verdictColour(part.verdict) }}>
            {part.verdict === "open" && part.settled ? words.say("part.settledSoFar") : words.partVerdict(part.verdict)}
          </span>
          {hints.length > 0 && <em className={styles.first}>{hints.join(" · ")}</em>}
        </Collapsible.Trigger>
        {before && <Change before={before} now={part} />}
        <Collapsible.Panel>
          <Later what={sayPage("partRow.whatMarginRests")}>
            <Reasons part={part} rig={rig} outcome={outcome} />
          </Later>
        </Collapsible.Panel>
      </Collapsible.Root>
    </li>
  );
}

function Change({ before, now }: { before: PartOutcome; now: PartOutcome }) {
  const text = (part: PartOutcome) => {
    const least = governingOf(part);
    return `${least ? `× ${quantity.margin(least.margin)}, ` : ""}${words.partVerdict(part.verdict)}`;
  };
  return text(before) === text(now) ? null : (
    <p className={styles.change}>{sayPage("partRow.before", { text: text(before) })}</p>
  );
}
