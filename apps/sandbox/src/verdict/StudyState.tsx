import { rigStrengths, whatIfSet } from "@secondline/scenarios";
import { useMemo } from "react";
import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
import { lookedAt } from "../state/soFar.ts";
import type { RunSlice, Work } from "../state/types.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import styles from "./VerdictColumn.module.css";

/** How far the search for the verdict is, what came in its way, and how to go on. */
export function StudyState() {
  const study = useSandbox((state) => state.run.study);
  const faults = useSandbox((state) => state.document.issues.length);
  const { stop, lookOn, look } = useActions();
  return (
    <>
      {faults > 0 && (
        <p className={styles.note}>
          {faults === 1 ? "One entry of the rig needs" : `${faults} entries of the rig need`} putting right; until then
          there is no verdict. The fall in sight is of the rig before that.{" "}
          <button type="button" className={styles.link} onClick={() => look({ rigOpen: true, place: "rig" })}>
            Show
          </button>
        </p>
      )}
      {(study.kind === "busy" || study.kind === "waiting") && (
        <div className={styles.busy} data-search>
          <Search study={study} />
          <Button icon="stop" iconOnly label="Stop the search" onClick={stop} />
        </div>
      )}
      {study.kind === "stopped" && (
        <p className={styles.note}>
          Stopped: <Stopped />{" "}
          <button type="button" className={styles.link} onClick={() => void lookOn()}>
            Look on
          </button>
        </p>
      )}
      {study.kind === "failed" && (
        <p className={styles.note} role="alert">
          The verdict was not computed: {shorten(study.message)}{" "}
          <button type="button" className={styles.link} onClick={() => void lookOn()}>
            Try again
          </button>
        </p>
      )}
    </>
  );
}

function Search({ study }: { study: Work }) {
  const of = useSetSize();
  const effort = useSandbox((state) => state.run.effort);
  const soFar = useSandbox((state) => state.run.verdict.soFar);
  const progress = study.kind === "busy" ? study.progress : { done: 0 };
  const run = lookedAt({ ...progress, ...(soFar && { soFar }) }, of);
  return <Meter done={overall(effort, progress.done)} doing={searchWords(run, of)} />;
}

function Stopped() {
  const of = useSetSize();
  const soFar = useSandbox((state) => state.run.verdict.soFar);
  const run = soFar?.search.events ?? 0;
  const found = soFar && soFar.verdict !== "open" ? "" : "nothing found yet, ";
  return <>{`${found}${run} of ${of} what-ifs looked at.`}</>;
}

/** "Computing: 12 of 44 what-ifs so far" */
function searchWords(run: number, of: number): string {
  if (run >= of) return `All ${of} looked at; the worst again, shifted a little`;
  return words.say("verdict.computing", { run, of }).replace(/\.$/, "");
}

/** About the share of the time that the first of the two looks takes [-]. */
const QUICK_SHARE = 0.1;

/** How far both looks are together, 0 to 1 [-]. */
const overall = (effort: RunSlice["effort"], done: number): number =>
  effort === "quick" ? QUICK_SHARE * done : QUICK_SHARE + (1 - QUICK_SHARE) * done;

/** How many what-ifs the whole set of the state in hand has. */
function useSetSize(): number {
  const assessed = useSandbox((state) => state.assessment.assessed);
  return useMemo(() => {
    const { weakPlaces } = rigStrengths(assessed.rig, assessed.tests);
    return whatIfSet({ rig: assessed.rig, weakPlaces, size: "full" }).length;
  }, [assessed]);
}

/** A search that fails altogether may give a reason per what-if. */
function shorten(text: string): string {
  return text.length > 240 ? `${text.slice(0, 240)}…` : text;
}
