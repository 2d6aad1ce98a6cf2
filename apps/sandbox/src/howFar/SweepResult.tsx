import { sweepPlot } from "@secondline/figures/sweep";
import { isApart, type SweptPoint } from "@secondline/scenarios";
import { changeText, howFarWords as words } from "@secondline/words/howFar";
import { candidatesOf, type FoundSweep, type HowFarDesk } from "@secondline/workbench";
import { useMemo } from "react";
import { useStore } from "zustand";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
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
      {words.sweep.sentences(named, swept).map((text) => (
        <p key={text} className={styles.sentence}>
          {text}
        </p>
      ))}
      <p className={styles.fact}>{words.region(swept)}</p>
      {desk.canOpen() && <Candidates {...{ desk, found }} />}
      <Picture {...{ desk, found }} />
      {words.sweep.notes(swept).map((text) => (
        <p key={text} className={styles.note}>
          {text}
        </p>
      ))}
      <Bad found={found} />
      <Disclosure title={say("table.title")} level={4}>
        <Table {...{ desk, found }} />
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

/** Before there is a curve: the rig that it is asked about. */
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

/** Of one number: the last value that surely keeps the limit, to be checked. */
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
  const isMap = swept.knobs.length > 1;
  const spots = swept.points.flatMap((point) => {
    const y = isMap ? point.values[1] : (point.own?.value ?? point.curve?.value);
    if (y === undefined || !desk.canOpen()) return [];
    return [
      {
        key: point.values.join(" "),
        at: [point.values[0]!, y] as const,
        label: spotLabel(found, point),
        pressed: at !== undefined && at.join() === point.values.join(),
        open: () => desk.look(point.values),
      },
    ];
  });
  return <SweepFigure plot={plot} spots={spots} caption={plot.notes.join(" ")} />;
}

/** "6 % slack: 1.43 (1.41 to 1.52). Show its run." */
function spotLabel({ swept }: FoundSweep, point: SweptPoint): string {
  const at = words.at(swept.knobs, point.values);
  const level = point.curve;
  const value = level ? `: ${words.sweep.value(swept.what, level.value)} (${words.sweep.band(swept.what, level)})` : "";
  return `${at}${value}. ${say("table.open", { at })}`;
}

function Bad({ found: { swept } }: { found: FoundSweep }) {
  if (swept.bad.length === 0) return null;
  return (
    <>
      <h4 className={styles.small}>{say("bad.head")}</h4>
      <ul className={styles.list}>
        {swept.bad.map(({ change, issues }) => (
          <li key={changeText(change)}>
            {changeText(change)}: {issues[0]?.message}
          </li>
        ))}
      </ul>
    </>
  );
}

function Table({ desk, found: { swept, named } }: { desk: HowFarDesk; found: FoundSweep }) {
  const { points, what, knobs, region } = swept;
  const parts = what.kind === "margin";
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          {knobs.map((knob) => (
            <th key={knob.name} scope="col">
              {words.number(named, knob)}
            </th>
          ))}
          <th scope="col">{words.sweep.say("table.value")}</th>
          <th scope="col">{words.sweep.say("table.band")}</th>
          {region && <th scope="col">{words.sweep.limit(what, region.limit)}</th>}
          {parts && <th scope="col">{words.sweep.say("table.governs")}</th>}
          <th scope="col">
            <span className="visually-hidden">{say("table.run")}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {points.map((point, i) => {
          const { values, curve, change } = point;
          const state = region?.states[i];
          return (
            <tr key={values.join(" ")}>
              {knobs.map((knob) => (
                <td key={knob.name} className={styles.number}>
                  {change[knob.name]}
                </td>
              ))}
              <td className={styles.number}>{curve ? words.sweep.value(what, curve.value) : "–"}</td>
              <td className={styles.number}>{curve ? words.sweep.band(what, curve) : ""}</td>
              {region && <td>{state && say(`state.${state}`)}</td>}
              {parts && <td>{curve && words.sweep.governs(named, curve)}</td>}
              <td>
                {desk.canOpen() && (
                  <button type="button" className={styles.link} onClick={() => desk.look(values)}>
                    {say("table.run")}
                    <span className="visually-hidden"> {words.at(knobs, values)}</span>
                  </button>
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
      {knobs.some(isApart) && <caption className={styles.note}>{words.sweep.say("caption.apart")}</caption>}
    </table>
  );
}
