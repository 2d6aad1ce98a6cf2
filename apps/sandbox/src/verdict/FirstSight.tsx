import { type Outcome, type Rig, whatIfKey, worstWhatIf } from "@secondline/scenarios";
import { lowered } from "@secondline/words";
import { sayVerdict } from "@secondline/words/page/verdict";
import { type Documents, documentsOf, foundOf, type ShownRun, type Step } from "@secondline/workbench";
import { useEffect, useRef, useState } from "react";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { quantity, words } from "../words.ts";
import styles from "./VerdictColumn.module.css";

/** What the last change did, in a sentence, after every change of the rig: of the fall at once, of the verdict when both are whole. */
export function LastChange() {
  const label = useSandbox((state) => state.document.history.past.findLast(isOfRig)?.label);
  const undone = useSandbox((state) => state.document.history.future.some(isOfRig));
  const outcome = useSandbox((state) => foundOf(state)?.outcome);
  const before = useSandbox((state) => state.run.previousVerdict);
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const shown = useSandbox((state) => state.run.shown);
  const previous = useSandbox((state) => state.run.previous);
  useCompared(shown, previous);
  const { ofEdit, verdictOfOne } = useWhatChanged();
  if (label === undefined || undone || !ofEdit) return null;
  const whole = outcome && before && verdictOfOne && before.rigName === outcome.rigName;
  const said = whole ? changeOfVerdict(rig, before, outcome) : changeOfFall(shown, previous);
  if (said === undefined) return null;
  return <p className={styles.did}>{sayVerdict("firstSight.lastChange", { label, said })}</p>;
}

const isOfRig = (step: Step<Documents>): boolean => documentsOf(step).includes("rig");

/** Whether the last change of the state was one of the rig's file, and whether the verdict before is that of one change before. */
function useWhatChanged(): { readonly ofEdit: boolean; readonly verdictOfOne: boolean } {
  const key = useSandbox((state) => state.assessment.key);
  const present = useSandbox((state) => state.document.history.present.rig);
  const steps = useSandbox((state) => state.document.history.past.filter(isOfRig).length);
  const before = useSandbox((state) => state.run.previousVerdict);
  const [seen, setSeen] = useState({ key, present, before, ofEdit: false, steps: -1 });
  if (seen.key === key && seen.before === before) return { ofEdit: seen.ofEdit, verdictOfOne: seen.steps === steps };
  const now = {
    key,
    present,
    before,
    ofEdit: seen.key === key ? seen.ofEdit : seen.present !== present,
    steps: seen.before === before ? seen.steps : steps,
  };
  setSeen(now);
  return { ofEdit: now.ofEdit, verdictOfOne: now.steps === steps };
}

const isChange = (shown: ShownRun | undefined, previous: ShownRun | undefined): boolean =>
  shown !== undefined && previous !== undefined && shown.key !== previous.key && shown.whatIf === previous.whatIf;

/** Of the fall in sight and the same fall before the change. */
function changeOfFall(shown: ShownRun | undefined, previous: ShownRun | undefined): string | undefined {
  if (!shown || !previous || !isChange(shown, previous)) return undefined;
  const [now, was] = [shown.outcome, previous.outcome];
  const told = [
    ...(now.drop === undefined || was.drop === undefined || quantity.drop(now.drop) === quantity.drop(was.drop)
      ? []
      : [sayVerdict("firstSight.drop", { now: quantity.drop(now.drop), before: quantity.drop(was.drop) })]),
    ...(!now.peaks || !was.peaks || quantity.load(now.peaks.leash) === quantity.load(was.peaks.leash)
      ? []
      : [
          sayVerdict("firstSight.pull", {
            now: quantity.load(now.peaks.leash),
            before: quantity.load(was.peaks.leash),
          }),
        ]),
  ];
  const [first, second] = told;
  if (first === undefined) return sayVerdict("firstSight.same");
  return second === undefined
    ? sayVerdict("firstSight.one", { first })
    : sayVerdict("firstSight.two", { first, second });
}

/** Over all what-ifs: the verdict, the deepest drop, and the margin of the part that is nearest to what is required now. */
function changeOfVerdict(rig: Rig, before: Outcome, now: Outcome): string {
  const [isNow, was] = [now, before].map((one) => lowered(words.verdictWord(one))) as [string, string];
  const drops = [now, before].map(({ falls }) => falls.deepest && quantity.drop(falls.deepest.drop));
  const told = [
    isNow === was
      ? sayVerdict("firstSight.verdictStays", { now: isNow })
      : sayVerdict("firstSight.verdictChanged", { now: isNow, before: was }),
    ...(drops[0] === undefined || drops[1] === undefined || drops[0] === drops[1]
      ? []
      : [sayVerdict("firstSight.deepestDrop", { now: drops[0], before: drops[1] })]),
    ...changeOfLeast(rig, before, now),
  ];
  return `${told.join("; ")}.`;
}

function changeOfLeast(rig: Rig, before: Outcome, now: Outcome): readonly string[] {
  const margin = ({ parts }: Outcome) => {
    const part = parts.find(({ id }) => id === now.leastMargin);
    const least = part?.governing && part.byClass[part.governing];
    return least && quantity.margin(least.margin);
  };
  const [isNow, was] = [margin(now), margin(before)];
  if (isNow === undefined || was === undefined || now.leastMargin === undefined) return [];
  const name = words.partName(rig, now.leastMargin);
  return [
    isNow === was
      ? sayVerdict("firstSight.nearestAsBefore", { name, margin: isNow })
      : sayVerdict("firstSight.nearestInstead", { name, margin: isNow, was }),
  ];
}

/** A change is shown beside the run before it; another what-if is no change. */
function useCompared(shown: ShownRun | undefined, previous: ShownRun | undefined): void {
  const { look } = useActions();
  const seen = useRef(shown);
  useEffect(() => {
    if (seen.current === shown) return;
    seen.current = shown;
    look({ compare: isChange(shown, previous) });
  }, [shown, previous, look]);
}

/** The what-if that the verdict turns on; the scene names the place in it that is nearest to its limit. */
export function WayToWorst() {
  const outcome = useSandbox((state) => foundOf(state)?.outcome);
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const chosen = useSandbox((state) => whatIfKey(state.session.whatIf));
  const { chooseWhatIf, look } = useActions();
  const worst = outcome && worstWhatIf(outcome);
  if (!worst || worst.key === chosen) return null;
  return (
    <button
      type="button"
      className={styles.worst}
      title={words.eventTitle(rig, worst.whatIf)}
      onClick={() => {
        chooseWhatIf(worst.whatIf);
        look({ selectedPart: undefined, camera: "event" });
      }}
    >
      {sayVerdict("firstSight.seeWorst")}
      <span className="visually-hidden">: {words.eventTitle(rig, worst.whatIf)}</span>
    </button>
  );
}
