import { sweepPlot } from "@secondline/figures/sweep";
import { isApart } from "@secondline/scenarios";
import { tellFault } from "@secondline/words/faults";
import { changeText, howFarWords as words } from "@secondline/words/howFar";
import { candidatesOf, type FoundSweep, type HowFarDesk, sweepSpots, sweepTable } from "@secondline/workbench";
import { useMemo } from "react";
import { useStore } from "zustand";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { Paragraphs } from "../design/Lines.tsx";
import { Table } from "../design/Table.tsx";
import { TextButton } from "../design/TextButton.tsx";
import { RigSketch } from "../rigSheet/RigSketch.tsx";
import styles from "./howFar.module.css";
import { SweepFigure } from "./SweepFigure.tsx";

const { say } = words;

/** What the sweep says: crossings in sentences, the plot, what it proposes to check, and every value in a table. */
export function SweepResult({ desk }: { desk: HowFarDesk }) {
  const found = useStore(desk.store, (state) => state.found);
  // Whatever was asked since makes it an old one.
  useStore(desk.store, (state) => state.asked);
  if (!found) return <Empty desk={desk} />;
  const { swept, named } = found;
  return (
    <section className={styles.result} aria-label={words.head(named, swept)}>
      <h3 className={styles.head}>{words.head(named, swept)}</h3>
      {desk.isStale() && <p className={styles.stale}>{say("stale")}</p>}
      <Paragraphs of={words.sweep.sentences(named, swept)} className={styles.sentence} />
      <p className={styles.fact}>{words.region(swept)}</p>
      {desk.canOpen() && <Candidates {...{ desk, found }} />}
      <Picture {...{ desk, found }} />
      <Paragraphs of={words.sweep.notes(named, swept)} className={styles.note} />
      <Bad found={found} />
      <Disclosure title={say("table.title")} level={4}>
        <Values {...{ desk, found }} />
      </Disclosure>
      <Disclosure title={say("drawn.head")} level={4}>
        <ul className={styles.list}>
          {swept.events.map(({ key, event }) => (
            <li key={key}>{words.sweep.eventTitle(named, event)}</li>
          ))}
          <li>{words.drawn(swept)}</li>
        </ul>
      </Disclosure>
    </section>
  );
}

/** Before the curve: the rig that the question is about. */
function Empty({ desk }: { desk: HowFarDesk }) {
  const subject = useStore(desk.store, (state) => state.subject);
  const asked = useStore(desk.store, (state) => state.asked);
  const rig = useStore(subject.sandbox.store, (state) => state.document.rig);
  return (
    <section className={styles.empty} aria-label={say("empty.ask")}>
      <p className={styles.sentence}>{say("empty.head")}</p>
      <RigSketch rig={rig} editing={asked.ranges[0]?.name} />
      <p className={styles.note}>{say("empty.ask")}</p>
    </section>
  );
}

/** For a sweep of one number: the last value that surely keeps the limit, to be checked. */
function Candidates({ desk, found }: { desk: HowFarDesk; found: FoundSweep }) {
  const preset = useStore(desk.store, (state) => state.preset);
  const { swept } = found;
  const { knobs } = swept;
  if (knobs.length > 1 || swept.limits.length === 0) return null;
  const all = candidatesOf(swept);
  const wanted = preset === "loosest" ? "most" : preset === "fewest" ? "least" : undefined;
  if (all.length === 0) return <p className={styles.fact}>{say("candidate.none")}</p>;
  const shown = all.filter(({ edge, rangeEnds }) => (wanted ? edge === wanted : !rangeEnds));
  return (
    <ul className={styles.candidates}>
      {shown.map(({ value, edge, rangeEnds }) => {
        const at = words.at(knobs, [value]);
        return (
          <li key={edge} className={styles.candidate}>
            <p>
              {say(`candidate.${edge}`, { at })} {rangeEnds && say("candidate.end")}
            </p>
            <Button label={say("candidate.open", { at })} onClick={() => desk.look([value])} />
          </li>
        );
      })}
    </ul>
  );
}

function Picture({ desk, found }: { desk: HowFarDesk; found: FoundSweep }) {
  const { swept, named } = found;
  const at = useStore(desk.store, (state) => state.at);
  const plot = useMemo(
    () =>
      sweepPlot(
        named,
        swept,
        swept.knobs.map((knob) => words.number(named, knob)),
      ),
    [swept, named],
  );
  const spots = (desk.canOpen() ? sweepSpots(found) : []).map(({ values, ...spot }) => ({
    ...spot,
    key: values.join(" "),
    pressed: at?.join() === values.join(),
    open: () => desk.look(values),
  }));
  return <SweepFigure plot={plot} spots={spots} caption={plot.notes.join(" ")} />;
}

function Bad({ found: { swept } }: { found: FoundSweep }) {
  if (swept.bad.length === 0) return null;
  return (
    <>
      <h4 className={styles.small}>{say("bad.head")}</h4>
      <ul className={styles.list}>
        {swept.bad.map(({ change, issues }) => (
          <li key={changeText(change)}>
            {changeText(change)}: {tellFault(issues[0]?.message ?? "")}
          </li>
        ))}
      </ul>
    </>
  );
}

function Values({ desk, found }: { desk: HowFarDesk; found: FoundSweep }) {
  const { knobs } = found.swept;
  const { heads, rows, numbers } = sweepTable(found);
  const run = ({ values }: (typeof rows)[number]) =>
    desk.canOpen() && (
      <TextButton onClick={() => desk.look(values)}>
        {say("table.run")}
        <span className="visually-hidden"> {words.at(knobs, values)}</span>
      </TextButton>
    );
  return (
    <Table
      className={styles.table}
      heads={[...heads, say("table.run")]}
      rows={rows.map((row) => [...row.cells, run(row)])}
      numbers={numbers}
      isLastHeadHidden
      caption={knobs.some(isApart) && <caption className={styles.note}>{words.sweep.say("caption.apart")}</caption>}
    />
  );
}
