import { useMemo } from "react";
import { useStore } from "zustand";
import type { PlaybackClock } from "../clock/playbackClock.ts";
import { ActionMenu, type MenuEntry } from "../design/ActionMenu.tsx";
import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
import type { Theme } from "../design/palette.ts";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { Elevation } from "../elevation/Elevation.tsx";
import { rigName } from "../files/autosave.ts";
import { useReducedMotion } from "../page/useMedia.ts";
import { answerWords } from "../question/answerWords.ts";
import { sceneWords } from "../scene/words.ts";
import { SandboxContext, useActions, useRecordings, useSandbox } from "../state/useSandbox.ts";
import styles from "./LayoutColumn.module.css";
import { layoutChanges } from "./layoutChanges.ts";
import { LOOKS } from "./layoutLook.ts";
import { type Layout, LETTERS } from "./layouts.ts";
import { TraceSample } from "./TraceSample.tsx";
import { fallDifferences, verdictDifferences } from "./whatItDid.ts";

interface Props {
  layout: Layout;
  /** 0 for the rig in hand. */
  place: number;
  first: Layout;
  clock: PlaybackClock;
  theme: Theme;
  frame: "event" | "overview";
  editing: boolean;
  full: boolean;
  onEdit: () => void;
  onDuplicate: () => void;
  onRemove: () => void;
}

/** One layout from top to bottom: picture, what came of it, verdict, and what it does differently. */
export function LayoutColumn(props: Props) {
  const { layout, place } = props;
  return (
    <SandboxContext.Provider value={layout.sandbox}>
      <section className={styles.column} aria-label={`Layout ${LETTERS[place]}`} data-editing={props.editing}>
        <Head {...props} />
        <Picture {...props} />
        <Fall />
        <VerdictLine />
        <Differences {...props} />
      </section>
    </SandboxContext.Provider>
  );
}

function Head({ layout, place, first, full, onEdit, onDuplicate, onRemove }: Props) {
  const changes = useChanges(first).length;
  const name = useSandbox((state) => rigName(state.document.history.present));
  const letter = LETTERS[place]!;
  const entries: readonly MenuEntry[] = [
    { label: "Change", onSelect: onEdit },
    { label: "Copy and change the copy", onSelect: onDuplicate, disabled: full },
    ...(place === 0
      ? []
      : ([
          {
            label: "Take as the rig in hand",
            detail: "In place of A; undo brings A back",
            onSelect: () =>
              first.sandbox.actions.replaceRig(
                layout.sandbox.store.getState().document.goodDocument,
                `took layout ${letter}`,
              ),
          },
          "rule",
          { label: "Take away", onSelect: onRemove },
        ] satisfies MenuEntry[])),
  ];
  return (
    <header className={styles.head}>
      <span className={styles.letter}>{letter}</span>
      <div className={styles.names}>
        <h3 className={styles.name} title={name}>
          {name}
        </h3>
        <p className={styles.role}>
          <TraceSample look={LOOKS[place]!} /> {place === 0 ? "the rig in hand" : roleWords(changes)}
        </p>
      </div>
      <Button label="Change" onClick={onEdit} aria-label={`Change layout ${letter}`} />
      <ActionMenu label={`More for layout ${letter}`} icon="menu" iconOnly entries={entries} />
    </header>
  );
}

function roleWords(changes: number): string {
  if (changes === 0) return "the same as A";
  if (changes > MOST_CHANGES) return "another rig";
  return changes === 1 ? "A with one change" : `A with ${changes} changes`;
}

/** What the layout around it does differently from the first one. */
function useChanges(first: Layout) {
  const document = useSandbox((state) => state.document.goodDocument);
  const base = useStore(first.sandbox.store, (state) => state.document.goodDocument);
  return useMemo(() => layoutChanges(base, document), [base, document]);
}

function Picture({ clock, theme, frame }: Props) {
  const { current } = useRecordings();
  const shown = useSandbox((state) => state.run.shown);
  const outcome = useSandbox((state) => state.run.verdict?.outcome);
  const reducedMotion = useReducedMotion();
  if (!current || !shown) return <div className={`${styles.picture} ${styles.empty}`}>The fall appears here.</div>;
  return (
    <div
      className={styles.picture}
      data-scene
      role="img"
      aria-label={sceneWords(current, shown.rig, outcome)}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is moved with the arrow keys
      tabIndex={0}
    >
      <Elevation
        bare
        recording={current}
        rig={shown.rig}
        clock={clock}
        theme={theme}
        camera={frame}
        showForces={false}
        reducedMotion={reducedMotion}
      />
    </div>
  );
}

/** What came of the what-if, or how far its computation is. */
function Fall() {
  const { fall, shown } = useSandbox((state) => state.run);
  const faults = useSandbox((state) => state.document.issues);
  const { stop, runNow } = useActions();
  const busy = fall.kind === "busy" || fall.kind === "waiting";
  return (
    <div className={styles.fall}>
      {faults.length > 0 && (
        <p className={styles.note} role="alert">
          {faults[0]!.message} What you see is the layout before that.
        </p>
      )}
      {busy && (
        <div className={styles.busy}>
          <Meter done={fall.kind === "busy" ? fall.progress.done : 0} doing="Computing the fall" />
          <Button icon="stop" iconOnly label="Stop" onClick={stop} />
        </div>
      )}
      {(fall.kind === "stopped" || fall.kind === "failed") && (
        <p className={styles.note} role={fall.kind === "failed" ? "alert" : undefined}>
          {fall.kind === "failed" ? `Not computed: ${fall.message}` : "Stopped."}{" "}
          <button type="button" className={styles.link} onClick={runNow}>
            Run
          </button>
        </p>
      )}
      {!busy && fall.kind === "idle" && shown && (
        <p className={styles.answer}>{answerWords(shown.outcome, shown.rig)}</p>
      )}
    </div>
  );
}

const WORDS = { holds: "Holds", thin: "Thin", fails: "Fails" } as const;

function VerdictLine() {
  const verdict = useSandbox((state) => state.run.verdict);
  const stale = useSandbox((state) => state.run.verdict?.rigVersion !== state.document.rigVersion);
  const study = useSandbox((state) => state.run.study);
  const { stop, runNow } = useActions();
  return (
    <div className={styles.verdict}>
      {verdict && (
        <>
          <p className={styles.word} style={{ color: `var(--${verdict.outcome.verdict}-ink)` }}>
            <VerdictMark verdict={verdict.outcome.verdict} size={18} />
            {WORDS[verdict.outcome.verdict]}
            {stale && <span className={styles.stale}>before the last change</span>}
          </p>
          <p className={styles.sentence}>{withoutWord(verdict.outcome.sentence, WORDS[verdict.outcome.verdict])}</p>
        </>
      )}
      {study.kind === "busy" && (
        <div className={styles.busy}>
          <Meter done={study.progress.done} doing="Computing the what-ifs" />
          <Button icon="stop" iconOnly label="Stop the study" onClick={stop} />
        </div>
      )}
      {(study.kind === "failed" || study.kind === "stopped") && (
        <p className={styles.note}>
          {study.kind === "failed" ? `No verdict: ${study.message}` : "The verdict was not computed to its end."}{" "}
          <button type="button" className={styles.link} onClick={runNow}>
            Compute it
          </button>
        </p>
      )}
    </div>
  );
}

/** The sentence opens with the verdict's word, which already stands above it. */
function withoutWord(sentence: string, word: string): string {
  if (!sentence.startsWith(`${word}: `)) return sentence;
  const rest = sentence.slice(word.length + 2);
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}

/** More than these changes are another rig rather than a change. */
const MOST_CHANGES = 6;

function Differences({ place, first }: Props) {
  const changes = useChanges(first);
  const { shown, verdict } = useSandbox((state) => state.run);
  const baseRun = useStore(first.sandbox.store, (state) => state.run);
  if (place === 0) return <div className={styles.differences}>The others are held against this one.</div>;
  const ready = shown && baseRun.shown && shown.whatIf === baseRun.shown.whatIf;
  const said = [
    ...(ready ? fallDifferences(baseRun.shown!.outcome, shown.outcome) : []),
    ...(verdict && baseRun.verdict ? verdictDifferences(baseRun.verdict.outcome, verdict.outcome) : []),
  ];
  return (
    <div className={styles.differences}>
      <h4 className={styles.heading}>What was changed</h4>
      {changes.length === 0 ? (
        <p>Nothing yet: it is the same as A.</p>
      ) : (
        <ul className={styles.changes}>
          {changes.slice(0, MOST_CHANGES).map(({ path, label, before, after }) => (
            <li key={path}>
              {label}: <s>{before}</s> <b>{after}</b>
            </li>
          ))}
          {changes.length > MOST_CHANGES && (
            <li>and {changes.length - MOST_CHANGES} more entries: it is another rig.</li>
          )}
        </ul>
      )}
      {changes.length > 0 && said.length > 0 && (
        <>
          <h4 className={styles.heading}>What it did</h4>
          <ul className={styles.did}>
            {said.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
