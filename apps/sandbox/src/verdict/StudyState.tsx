import type { Outcome, StudyProgress } from "@secondline/scenarios";
import { sayPage } from "@secondline/words/page/page";
import { foundOf, type LookedAt, lookedAt, mayTurn, type RunSlice } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
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
          {sayPage("studyState.faultsFirst", { faults })}{" "}
          <button type="button" className={styles.link} onClick={() => look({ rigOpen: true, place: "rig" })}>
            {sayPage("studyState.show")}
          </button>
        </p>
      )}
      {(study.kind === "busy" || study.kind === "waiting") && (
        <div className={styles.busy} data-search>
          <Search study={study} />
          <Button icon="stop" iconOnly label={sayPage("studyState.stopSearch")} onClick={stop} />
        </div>
      )}
      {study.kind === "stopped" && (
        <p className={styles.note}>
          {sayPage("studyState.stopped")} <Stopped />{" "}
          <button type="button" className={styles.link} onClick={() => void lookOn()}>
            {sayPage("studyState.lookOn")}
          </button>
        </p>
      )}
      {(study.kind === "idle" || study.kind === "done") && <Longer />}
      {study.kind === "failed" && (
        <p className={styles.note} role="alert">
          {sayPage("studyState.notComputed", { message: shorten(study.message) })}{" "}
          <button type="button" className={styles.link} onClick={() => void lookOn()}>
            {sayPage("studyState.tryAgain")}
          </button>
        </p>
      )}
    </>
  );
}

/** What lies near a limit is settled by more runs. */
function Longer() {
  const outcome = useSandbox((state) => foundOf(state)?.outcome);
  const { lookLonger } = useActions();
  if (!outcome || !mayTurn(outcome)) return null;
  return (
    <p className={styles.note}>
      {words.say("study.settled", settledIn(outcome))}{" "}
      <button type="button" className={styles.link} onClick={() => void lookLonger()}>
        {sayPage("studyState.lookLonger")}
      </button>
    </p>
  );
}

/** Of the parts that carry something, how many more runs would say nothing else of. */
function settledIn({ parts, search }: Outcome, runs = search.runs) {
  const loaded = parts.filter(({ governing }) => governing);
  return { runs, settled: loaded.filter((part) => part.settled).length, parts: loaded.length };
}

function Search({ study }: { study: RunSlice["study"] }) {
  const effort = useSandbox((state) => state.run.effort);
  const soFar = useSandbox((state) => state.run.verdict.soFar);
  const progress: StudyProgress = study.kind === "busy" ? study.progress : { done: 0 };
  const looked = lookedAt({ ...progress, ...(soFar && { soFar }) });
  const { made, soFar: latest } = progress;
  const grown = latest && words.say("study.settled", settledIn(latest, made)).replace(/\.$/, "");
  return <Meter done={overall(effort, progress.done)} doing={searchWords(looked, grown)} />;
}

function Stopped() {
  const soFar = useSandbox((state) => state.run.verdict.soFar);
  const looked = lookedAt({ ...(soFar && { soFar }) });
  const found = soFar && soFar.verdict !== "open" ? "" : sayPage("studyState.nothingFoundYet");
  return (
    <>
      {looked
        ? sayPage("studyState.counted", { found, run: looked.run, of: looked.of })
        : sayPage("studyState.noneCounted")}
    </>
  );
}

/** "Computing: 12 of 44 what-ifs so far" */
function searchWords(looked: LookedAt | undefined, grown: string | undefined): string {
  if (!looked) return sayPage("studyState.computing");
  const { run, of } = looked;
  if (run >= of) return grown ?? sayPage("studyState.drawing", { of });
  return words.say("verdict.computing", { run, of }).replace(/\.$/, "");
}

/** About the share of the time that the first of the two looks takes [-]. */
const QUICK_SHARE = 0.1;

/** How far both looks are together, 0 to 1 [-]. */
const overall = (effort: RunSlice["effort"], done: number): number =>
  effort === "quick" ? QUICK_SHARE * done : QUICK_SHARE + (1 - QUICK_SHARE) * done;

/** A search that fails altogether may give a reason per what-if. */
function shorten(text: string): string {
  return text.length > 240 ? `${text.slice(0, 240)}…` : text;
}
