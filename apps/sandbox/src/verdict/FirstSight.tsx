import { whatIfKey, worstWhatIf } from "@secondline/scenarios";
import { sayVerdict } from "@secondline/words/page/verdict";
import { changeNow, foundOf, isChange, lastChangeTold, type ShownRun, seeChange } from "@secondline/workbench";
import { useEffect, useRef, useState } from "react";
import { useShallow } from "zustand/react/shallow";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import styles from "./VerdictColumn.module.css";

/** What the last change did, in a sentence. */
export function LastChange() {
  const now = useSandbox(useShallow(changeNow));
  const [seen, setSeen] = useState(() => seeChange(undefined, now));
  const next = seeChange(seen, now);
  if (next !== seen) setSeen(next);
  const said = useSandbox((state) => lastChangeTold(next, state));
  useCompared(
    useSandbox((state) => state.run.shown),
    useSandbox((state) => state.run.previous),
  );
  return said === undefined ? null : <p className={styles.did}>{said}</p>;
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
