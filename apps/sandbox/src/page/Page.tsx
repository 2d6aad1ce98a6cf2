import { sayPage } from "@secondline/words/page/page";
import type { PlaybackClock } from "@secondline/workbench";
import { lazy, useEffect, useState } from "react";
import type { Booted } from "../boot.ts";
import { Later } from "../design/Later.tsx";
import type { Theme } from "../design/palette.ts";
import { useFileActions } from "../files/useFileActions.ts";
import { useFileDrop } from "../files/useFileDrop.ts";
import { Answer } from "../question/Answer.tsx";
import { Question } from "../question/Question.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { VerdictColumn } from "../verdict/VerdictColumn.tsx";
import { Header } from "./Header.tsx";
import { LiveRegion } from "./LiveRegion.tsx";
import { Notices } from "./Notices.tsx";
import styles from "./Page.module.css";
import "./print.css";
import { useRunClock } from "../clock/useRunClock.ts";
import { useWide } from "../design/useMedia.ts";
import { ScenePlace } from "../inSight/ScenePlace.tsx";
import { TimePlace } from "../inSight/TimePlace.tsx";
import { useClockKeys } from "../time/useClockKeys.ts";
import { PhoneSheet, type Stop } from "./PhoneSheet.tsx";
import { useKeys } from "./useKeys.ts";
import { useTheme } from "./useTheme.ts";

// Their code comes when they are asked for: the first load stays small.
const EarlierWork = lazy(async () => ({ default: (await import("../files/EarlierWork.tsx")).EarlierWork }));
const RigSheet = lazy(async () => ({ default: (await import("../rigSheet/RigSheet.tsx")).RigSheet }));
const LayoutsView = lazy(async () => ({ default: (await import("../layouts/LayoutsView.tsx")).LayoutsView }));
const HowFarView = lazy(async () => ({ default: (await import("../howFar/HowFarView.tsx")).HowFarView }));
const Welcome = lazy(async () => ({ default: (await import("./Welcome.tsx")).Welcome }));
const WearView = lazy(async () => ({ default: (await import("../wear/WearView.tsx")).WearView }));
const NewRigView = lazy(async () => ({ default: (await import("../newRig/NewRigView.tsx")).NewRigView }));
const CardView = lazy(async () => ({ default: (await import("../card/CardView.tsx")).CardView }));
const LessonsView = lazy(async () => ({ default: (await import("../lessons/LessonsView.tsx")).LessonsView }));

/** The whole page: on a wide screen scene, verdict, time and rig at once; on a narrow one scene and a sheet. */
export function Page({ booted, clock }: { booted: Booted; clock: PlaybackClock }) {
  const wide = useWide();
  const theme = useTheme();
  const files = useFileActions(booted.works, clock, booted.read);
  const over = useFileDrop(files.openFile);
  useKeys(files);
  useRunClock(clock, booted.time);
  const view = useSandbox((state) => state.session.view);
  // A clock that nobody sees stands still.
  useEffect(() => {
    if (view !== "rig") clock.pause();
  }, [view, clock]);
  return (
    <>
      <div className={wide ? `${styles.wide} ${view === "rig" ? styles.withVerdict : ""}` : styles.narrow}>
        <Header files={files} theme={theme} wide={wide} />
        {view === "rig" && (wide ? <WideBody {...{ clock, theme }} /> : <NarrowBody {...{ clock, theme }} />)}
        {view !== "rig" && (
          <Later what={sayPage("page.view")} fallback={<main className={styles.scene} aria-busy="true" />}>
            {view === "layouts" ? (
              <LayoutsView {...{ booted, theme, wide }} />
            ) : view === "howFar" ? (
              <HowFarView {...{ booted, theme, wide }} />
            ) : view === "wear" ? (
              <WearView wide={wide} />
            ) : view === "newRig" ? (
              <NewRigView theme={theme} openDocument={files.openDocument} />
            ) : view === "card" ? (
              <CardView />
            ) : (
              <LessonsView {...{ booted, theme, wide }} />
            )}
          </Later>
        )}
      </div>
      <LiveRegion />
      <Notices />
      {files.earlier !== undefined && (
        <Later what={sayPage("page.listEarlierWork")}>
          <EarlierWork
            open={files.earlier}
            onClose={() => files.showEarlier(false)}
            works={booted.works}
            onOpen={files.openDocument}
          />
        </Later>
      )}
      {over && <div className={styles.drop}>{sayPage("page.dropRigFile")}</div>}
    </>
  );
}

const FirstWords = () => (
  <Later what={sayPage("page.what")}>
    <Welcome />
  </Later>
);

function WideBody({ clock, theme }: { clock: PlaybackClock; theme: Theme }) {
  useClockKeys(clock);
  const rigOpen = useSandbox((state) => state.session.rigOpen);
  const { look } = useActions();
  return (
    <>
      <div className={styles.body}>
        <aside
          className={`${styles.rig} ${rigOpen ? styles.open : ""}`}
          aria-label={sayPage("page.rigSheet")}
          inert={!rigOpen}
        >
          <div className={styles.rigInner}>
            <Later what={sayPage("page.rigSheetPart")}>
              <RigSheet onClose={() => look({ rigOpen: false })} />
            </Later>
          </div>
        </aside>
        <main className={styles.main}>
          <div className={styles.strip}>
            <FirstWords />
            <Question />
            <Answer />
          </div>
          <div className={styles.scene}>
            <ScenePlace clock={clock} theme={theme} />
          </div>
        </main>
      </div>
      <aside className={styles.verdict} aria-label={sayPage("page.verdict")}>
        <VerdictColumn />
      </aside>
      <section className={styles.time} aria-label={sayPage("page.time")}>
        <TimePlace clock={clock} theme={theme} compact={false} />
      </section>
    </>
  );
}

function NarrowBody({ clock, theme }: { clock: PlaybackClock; theme: Theme }) {
  useClockKeys(clock);
  const [stop, setStop] = useState<Stop>("half");
  return (
    <>
      <main className={styles.scene} aria-label={sayPage("page.scene")}>
        <ScenePlace clock={clock} theme={theme} />
      </main>
      <PhoneSheet
        stop={stop}
        onStop={setStop}
        clock={clock}
        pages={{
          verdict: (
            <VerdictColumn first={<FirstWords />}>
              <Question />
              <Answer />
            </VerdictColumn>
          ),
          time: <TimePlace clock={clock} theme={theme} compact />,
          rig: (
            <Later what={sayPage("page.rigSheetPart")}>
              <RigSheet />
            </Later>
          ),
        }}
      />
    </>
  );
}
