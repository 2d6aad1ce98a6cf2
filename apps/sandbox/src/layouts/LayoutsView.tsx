import type { Recording } from "@secondline/engine";
import { sayLayouts } from "@secondline/words/page/layouts";
import {
  type Layout,
  LETTERS,
  layoutCautions,
  MOST_LAYOUTS,
  outcomeOf,
  type PlaybackClock,
  rigName,
  writtenLayout,
} from "@secondline/workbench";
import { useEffect, useMemo, useRef, useState } from "react";
import type { Booted } from "../boot.ts";
import { pageClock } from "../clock/pageClock.ts";
import { useStart } from "../clock/useStart.ts";
import { Choice } from "../design/Choice.tsx";
import type { Theme } from "../design/palette.ts";
import { Question } from "../question/Question.tsx";
import { usePageKeys } from "../state/usePageKeys.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { PlayStrip } from "../time/PlayStrip.tsx";
import { CautionFoot } from "../verdict/CautionFoot.tsx";
import { tellKnown } from "../wearInHand/work.ts";
import { words } from "../words.ts";
import { AddLayout } from "./AddLayout.tsx";
import { DifferenceTable } from "./DifferenceTable.tsx";
import { LayoutColumn } from "./LayoutColumn.tsx";
import { LayoutEditor } from "./LayoutEditor.tsx";
import { LayoutFrontier } from "./LayoutFrontier.tsx";
import styles from "./LayoutsView.module.css";
import { LayoutTraces } from "./LayoutTraces.tsx";
import { layoutsOf, useEach, useLayoutList } from "./useLayouts.ts";

interface Props {
  booted: Booted;
  theme: Theme;
  wide: boolean;
}
type Frame = "event" | "overview";
const FRAMES = [
  { value: "event", label: sayLayouts("layoutsView.closeFall") },
  { value: "overview", label: sayLayouts("layoutsView.wholeLine") },
] as const;

/** Two to four layouts with the same what-if: pictures and traces that share one clock, and what differs, in a table. */
export function LayoutsView({ booted, theme, wide }: Props) {
  const layouts = layoutsOf(booted);
  const list = useLayoutList(layouts);
  const [editing, setEditing] = useState<string>();
  const [frame, setFrame] = useState<Frame>("event");
  const { tell, announce } = useActions();
  const { clock, recordings } = useSharedClock(list);
  useEffect(() => layouts.follow(), [layouts]);
  // A layout may be a rig that the record speaks of, though the open rig is none.
  useEffect(() => void tellKnown(booted.sandbox), [booted]);
  useAnnouncedResults(list);
  const edited = list.find(({ id }) => id === editing);
  // In the layout that is being changed.
  const { undo, redo } = (edited ?? list.at(-1)!).sandbox.actions;
  usePageKeys({ undo, redo });
  const cautions = useCautions(list);
  const full = list.length >= MOST_LAYOUTS;

  function duplicate(layout: Layout): void {
    const copy = layouts.add(writtenLayout(layout.sandbox));
    if (!copy) return;
    setEditing(copy.id);
    announce(sayLayouts("layoutsView.copied", { letter: LETTERS[list.length]! }));
  }
  function remove(layout: Layout): void {
    const name = sayLayouts("layoutsView.layout", {
      letter: LETTERS[list.indexOf(layout)]!,
      rigName: rigName(writtenLayout(layout.sandbox).document),
    });
    const bringBack = layouts.remove(layout.id);
    if (bringBack)
      tell({
        tone: "word",
        text: sayLayouts("layoutsView.takenAway", { name }),
        action: { label: sayLayouts("layoutsView.bringBack"), run: bringBack },
      });
  }
  const bar = (
    <div className={styles.bar}>
      <Question />
      <div className={styles.tools}>
        <Choice<Frame>
          compact
          label={sayLayouts("layoutsView.view")}
          value={frame}
          options={FRAMES}
          onChange={setFrame}
        />
        {list.length > 1 && !full && (
          <AddLayout list={list} onDuplicate={duplicate} onAdd={layouts.add} read={booted.read} />
        )}
      </div>
    </div>
  );
  const editor = edited && (
    <LayoutEditor
      key={edited.id}
      layout={edited}
      letter={LETTERS[list.indexOf(edited)]!}
      wide={wide}
      onClose={() => setEditing(undefined)}
    />
  );
  if (editor && !wide) {
    return (
      <div className={styles.view}>
        <main className={styles.main}>{editor}</main>
        <CautionFoot cautions={cautions} />
      </div>
    );
  }
  return (
    <div className={styles.view}>
      <div className={styles.body}>
        {editor && <aside className={styles.editor}>{editor}</aside>}
        <main className={styles.main}>
          {wide && bar}
          <div className={styles.scroll}>
            <h2 className="visually-hidden">{sayLayouts("layoutsView.layoutsSideSide")}</h2>
            {!wide && bar}
            <div className={styles.columns} style={{ "--count": Math.max(list.length, 2) } as React.CSSProperties}>
              {list.map((layout, i) => (
                <LayoutColumn
                  key={layout.id}
                  {...{ layout, clock, theme, frame }}
                  place={i}
                  first={list[0]!}
                  editing={layout.id === editing}
                  full={full}
                  onEdit={() => setEditing(layout.id)}
                  onDuplicate={() => duplicate(layout)}
                  onRemove={() => remove(layout)}
                />
              ))}
              {list.length === 1 && (
                <AddLayout first list={list} onDuplicate={duplicate} onAdd={layouts.add} read={booted.read} />
              )}
            </div>
            <LayoutTraces {...{ clock, recordings, wide }} />
            {list.length > 1 && <LayoutFrontier list={list} />}
            {list.length > 1 && <DifferenceTable list={list} />}
          </div>
          <div className={styles.play}>
            <PlayStrip clock={clock} />
          </div>
        </main>
      </div>
      <CautionFoot cautions={cautions} />
    </div>
  );
}

/** One clock for all: as long as the longest run. Another what-if plays from its start; a changed layout keeps the moment. */
function useSharedClock(list: readonly Layout[]): {
  clock: PlaybackClock;
  recordings: readonly (Recording | undefined)[];
} {
  const [clock] = useState(() => pageClock({ duration: 0, speed: 1 / 4 }));
  const recordings = useEach(list, (_state, { sandbox }) => sandbox.recordings.current);
  const whatIf = useSandbox((state) => state.session.whatIf);
  const start = useStart(clock);
  const started = useRef<unknown>(undefined);
  useEffect(() => {
    const runs = recordings.filter((one) => one !== undefined);
    const [run] = runs;
    if (!run) return;
    clock.setRun({ duration: Math.max(...runs.map(({ duration }) => duration)), frameStep: 1 / run.frames.rate });
    if (started.current === whatIf) return;
    started.current = whatIf;
    start(run);
  }, [clock, recordings, whatIf, start]);
  useEffect(() => () => clock.pause(), [clock]);
  return { clock, recordings };
}

/** Says aloud when all layouts are computed. */
function useAnnouncedResults(list: readonly Layout[]): void {
  const { announce } = useActions();
  const busy = useEach(list, ({ run }) =>
    [run.fall.kind, run.study.kind].some((kind) => kind === "busy" || kind === "waiting"),
  ).includes(true);
  const was = useRef(busy);
  useEffect(() => {
    if (was.current && !busy && list.length > 1) announce(sayLayouts("layoutsView.ready"));
    was.current = busy;
  }, [busy, list, announce]);
}

/** The cautions of all layouts, each once, with the letters of its layouts. */
function useCautions(list: readonly Layout[]): readonly string[] {
  const facts = useEach(list, (state) => outcomeOf(state)?.cautions);
  const rigs = useEach(list, ({ assessment }) => assessment.assessed.rig);
  return useMemo(
    () =>
      layoutCautions(
        words.generalCautions(),
        facts.map((one, i) => ({ letter: LETTERS[i]!, cautions: one ? words.cautions(rigs[i]!, one) : [] })),
      ),
    [facts, rigs],
  );
}
