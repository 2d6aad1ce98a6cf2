import { stripPlot } from "@secondline/figures/draws";
import {
  type LoadStrip,
  type Outcome,
  type PartOutcome,
  PULL_LIMITS,
  partStrip,
  pullStrip,
  type Rig,
} from "@secondline/scenarios";
import { sayDraws, stripList } from "@secondline/words/draws";
import { useMemo } from "react";
import { PlotInPlace } from "../picture/PlotInPlace.tsx";
import { words } from "../words.ts";
import styles from "./Reasons.module.css";

/** The single runs behind a part's E as dots. */
export function PartRuns({ part, rig, outcome }: { part: PartOutcome; rig: Rig; outcome: Outcome }) {
  const strip = useMemo(() => partStrip(part), [part]);
  const title = sayDraws("strip.title", { part: words.partName(rig, part.id) });
  return strip && <Strip {...{ strip, outcome, rig, title }} />;
}

/** The runs of the event with the hardest pull on the person. */
export function PullRuns({ rig, outcome }: { rig: Rig; outcome: Outcome }) {
  const strip = useMemo(() => pullStrip(outcome), [outcome]);
  return strip && <Strip {...{ strip, outcome, rig }} title={sayDraws("strip.person")} limits={LIMITS} />;
}

const LIMITS = PULL_LIMITS.map(({ limit }) => limit);

interface Props {
  strip: LoadStrip;
  outcome: Outcome;
  rig: Rig;
  title: string;
  limits?: readonly number[];
}

function Strip({ strip, outcome: { rigName, whatIfs }, rig, title, limits }: Props) {
  const plot = useMemo(() => stripPlot(strip, title, rigName, limits), [strip, title, rigName, limits]);
  return (
    <figure className={styles.strip}>
      <PlotInPlace plot={plot} />
      <figcaption>
        {words.eventTitle(rig, whatIfs[strip.whatIf]!.whatIf)}. {plot.notes.join(" ")}
      </figcaption>
      <p className="visually-hidden">{stripList(strip)}</p>
    </figure>
  );
}
