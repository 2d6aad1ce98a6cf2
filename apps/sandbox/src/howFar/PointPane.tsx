import { whatIfKey } from "@secondline/scenarios";
import { tellFault } from "@secondline/words/faults";
import { howFarWords as words } from "@secondline/words/howFar";
import {
  type FoundSweep,
  governingAt,
  type HowFarDesk,
  type PointSandbox,
  pointSandbox,
  takeAsLayout,
} from "@secondline/workbench";
import { useEffect, useRef, useState } from "react";
import type { Booted } from "../boot.ts";
import { pageClock } from "../clock/pageClock.ts";
import { useRunClock } from "../clock/useRunClock.ts";
import { Button } from "../design/Button.tsx";
import type { Theme } from "../design/palette.ts";
import { ScenePlace } from "../inSight/ScenePlace.tsx";
import { LayoutVerdict } from "../layouts/LayoutOutcome.tsx";
import { layoutsOf } from "../layouts/useLayouts.ts";
import { pageServices } from "../state/pageServices.ts";
import { SandboxContext, useActions, useSandbox } from "../state/useSandbox.ts";
import { PlayStrip } from "../time/PlayStrip.tsx";
import { words as common } from "../words.ts";
import { pageRunner, sideRunner } from "../worker/runner.ts";
import styles from "./howFar.module.css";

const { say } = words;

interface Props {
  booted: Booted;
  desk: HowFarDesk;
  found: FoundSweep;
  at: readonly number[];
  theme: Theme;
}

/** One value of the sweep: the fall that governs there in the scene, its check, and ways to take it over. */
export function PointPane({ booted, desk, found, at, theme }: Props) {
  const [point] = useState(() => pointOf({ booted, desk, found, at }));
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    point?.sandbox.actions.runNow();
    return () => point?.sandbox.actions.stop();
  }, [point]);
  const title = say("point.title", { at: words.at(found.swept.knobs, at) });
  return (
    <aside className={styles.point} aria-label={title}>
      <header className={styles.pointHead}>
        <h3 ref={heading} className={styles.pointTitle} tabIndex={-1}>
          {title}
        </h3>
        <Button icon="close" iconOnly tone="quiet" label={say("point.close")} onClick={() => desk.look(undefined)} />
      </header>
      {point ? (
        <SandboxContext.Provider value={point.sandbox}>
          <Fall theme={theme} />
          <Check {...{ point, at, found }} />
        </SandboxContext.Provider>
      ) : (
        <p className={styles.wrong}>
          {tellFault(found.swept.bad.find(({ values }) => values.join() === at.join())?.issues[0]?.message ?? "")}
        </p>
      )}
      {found.swept.knobs.some(({ kind }) => kind === "months") ? (
        <p className={styles.note}>{say("point.months")}</p>
      ) : (
        point && <Take {...{ booted, desk, found, at, point }} />
      )}
    </aside>
  );
}

/** The fall of what governs at the value. */
function pointOf({ booted, desk, found, at }: Omit<Props, "theme">): PointSandbox | undefined {
  const document = desk.documentAt(at);
  if (!document) return undefined;
  const { subject } = desk.store.getState();
  return pointSandbox({
    subject: subject.sandbox,
    document,
    whatIf: governingAt(found.swept, at),
    services: pageServices({ runner: pageRunner(), read: booted.read, kept: booted.kept }),
    aside: sideRunner(),
  });
}

function Fall({ theme }: { theme: Theme }) {
  const [clock] = useState(() => pageClock({ duration: 0, speed: 1 / 4 }));
  useRunClock(clock, undefined);
  useEffect(() => () => clock.pause(), [clock]);
  const fall = useSandbox((state) => state.run.fall);
  const shown = useSandbox((state) => state.run.shown);
  const whatIf = useSandbox((state) => state.session.whatIf);
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  return (
    <>
      <div className={styles.scene} data-event={whatIfKey(whatIf)}>
        <ScenePlace clock={clock} theme={theme} />
      </div>
      <div className={styles.play}>
        <PlayStrip clock={clock} />
      </div>
      <p className={styles.note}>{say("point.of", { event: common.eventTitle(rig, whatIf) })}</p>
      {fall.kind === "failed" && (
        <p className={styles.wrong} role="alert">
          {say("point.failed", { message: fall.message })}
        </p>
      )}
      {shown && <p className={styles.sentence}>{common.story(shown.assessed.rig, shown.outcome).join(" ")}</p>}
    </>
  );
}

/** Until the whole rig is checked, the pane says nothing about the rig. */
function Check({ point, at, found }: { point: PointSandbox; at: readonly number[]; found: FoundSweep }) {
  const known = useSandbox((state) => state.run.verdict.found !== undefined);
  const [asked, setAsked] = useState(false);
  const ready = useSandbox((state) => state.run.fall.kind === "done" && state.run.shown !== undefined);
  if (asked || known) return <LayoutVerdict />;
  return (
    <div className={styles.check}>
      <p className={styles.note}>{say("point.unchecked")}</p>
      <Button
        tone="filled"
        label={say("point.check", { at: words.at(found.swept.knobs, at) })}
        disabled={!ready}
        onClick={() => {
          setAsked(true);
          point.check();
        }}
      />
    </div>
  );
}

/** Takes the value over: as a layout beside the others, or as the open rig; both can be taken back. */
function Take({
  booted,
  found,
  at,
  point,
}: {
  booted: Booted;
  found: FoundSweep;
  at: readonly number[];
  point: PointSandbox;
}) {
  const { look, tell, replaceRig } = booted.sandbox.actions;
  const layouts = layoutsOf(booted);
  const { announce } = useActions();
  const name = words.at(found.swept.knobs, at);
  const document = () => point.sandbox.store.getState().document.goodDocument;
  return (
    <div className={styles.take}>
      <Button
        label={say("point.layout")}
        onClick={() => takeAsLayout(layouts, document(), name, { tell, look, announce })}
      />
      <Button
        label={say("point.inHand")}
        onClick={() => {
          replaceRig(document(), say("took.inHand", { at: name }));
          look({ view: "rig" });
        }}
      />
    </div>
  );
}
