import type { Outcome, PartOutcome, Rig } from "@secondline/scenarios";
import { sayPage } from "@secondline/words/page/page";
import { lazy } from "react";
import { quantity, words } from "../words.ts";
import { MarginBar } from "./MarginBar.tsx";
import styles from "./PartRow.module.css";
import { RowFrame } from "./RowFrame.tsx";

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
    <RowFrame
      id={part.id}
      verdict={part.verdict}
      title={title}
      single={isSingle ? sayPage("partRow.noSecond") : undefined}
      bar={least && <MarginBar of={least} verdict={part.verdict} />}
      number={least && `× ${quantity.margin(least.margin)}`}
      word={part.verdict === "open" && part.settled ? words.say("part.settledSoFar") : words.partVerdict(part.verdict)}
      {...{ hints, open, onOpenChange }}
      below={before && <Change before={before} now={part} />}
      what={sayPage("partRow.whatMarginRests")}
    >
      <Reasons part={part} rig={rig} outcome={outcome} />
    </RowFrame>
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
