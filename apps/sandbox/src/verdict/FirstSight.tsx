import { whatIfKey, worstWhatIf } from "@secondline/scenarios";
import { sayVerdict } from "@secondline/words/page/verdict";
import {
  changeOfFall,
  changeOfVerdict,
  type Documents,
  documentsOf,
  foundOf,
  isChange,
  type ShownRun,
  type Step,
} from "@secondline/workbench";
import { useEffect, useRef, useState } from "react";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
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
