import { sayPage } from "@secondline/words/page/page";
import { outcomeOf, type PlaybackClock } from "@secondline/workbench";
import type { weakPlace } from "@secondline/workbench/weakPlace";
import { lazy, Suspense, useEffect, useMemo, useRef, useState } from "react";
import { Guard } from "../design/Guard.tsx";
import type { Theme } from "../design/palette.ts";
import { useReducedMotion } from "../design/useMedia.ts";
import { useSoon } from "../design/useSoon.ts";
import { useSavePictures } from "../files/useSavePictures.ts";
import type { SceneSnapshot, SnapshotPlace } from "../scene/sceneProps.ts";
import { useRecordings, useSandbox } from "../state/useSandbox.ts";
import { PrintedPictures } from "./PrintedPictures.tsx";
import styles from "./ScenePlace.module.css";
import { SceneTools } from "./SceneTools.tsx";
import { useFallIsComing } from "./useFallIsComing.ts";

// There is nothing to show in the scene before the first fall. What draws it comes while that is computed.
const bringScene = () => import("../scene/SceneView.tsx");
const SceneView = lazy(async () => ({ default: (await bringScene()).SceneView }));
const RigSketch = lazy(async () => ({ default: (await import("../rigSheet/RigSketch.tsx")).RigSketch }));

/** The scene of the current run; before there is one, a drawing of the rig. */
export function ScenePlace({ clock, theme }: { clock: PlaybackClock; theme: Theme }) {
  const { current, previous } = useRecordings();
  const shown = useSandbox((state) => state.run.shown);
  const verdict = useSandbox(outcomeOf);
  const weak = useWeakPlace();
  const session = useSandbox((state) => state.session);
  const reducedMotion = useReducedMotion();
  const snapshot: SnapshotPlace = useRef(null);
  const save = useSavePictures(theme);
  const ready = useSoon(current !== undefined, 1);
  if (!current || !shown || !ready) return <Waiting />;
  const main = verdict?.parts.find(({ id }) => id === "main");
  return (
    <>
      <PrintedPictures clock={clock} />
      <div className={styles.place}>
        {/* A scene that breaks must not take the numbers with it. */}
        <Guard key={shown.outcome.key} instead={(message) => <NotDrawn message={message} />}>
          <Suspense fallback={<Waiting />}>
            <SceneView
              {...{ clock, theme, weak, reducedMotion, snapshot }}
              recording={current}
              previous={session.compare ? previous : undefined}
              rig={shown.assessed.rig}
              outcome={verdict}
              gaveWay={shown.outcome.gaveWay}
              camera={session.camera}
              showForces={session.showForces}
              selectedPart={session.selectedPart}
              strengthKN={main && main.strength5 / 1000}
            />
          </Suspense>
        </Guard>
        <SceneTools savePicture={(kind) => void save.scene(() => taken(snapshot), kind)} />
      </div>
    </>
  );
}

/** Named as soon as what names it has come; where it does not, the scene does without. */
function useWeakPlace() {
  const [name, setName] = useState<typeof weakPlace>();
  useEffect(() => {
    void import("@secondline/workbench/weakPlace")
      .then(({ weakPlace }) => setName(() => weakPlace))
      .catch(() => undefined);
  }, []);
  const outcome = useSandbox(outcomeOf);
  const shown = useSandbox((state) => state.run.shown);
  const key = useSandbox((state) => state.assessment.key);
  return useMemo(() => name?.(outcome, shown, key), [name, outcome, shown, key]);
}

function taken({ current: take }: SnapshotPlace): SceneSnapshot {
  if (!take) throw new Error(sayPage("scenePlace.notDrawn"));
  return take();
}

function Waiting() {
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const coming = useFallIsComing();
  useEffect(() => void bringScene().catch(() => undefined), []);
  return (
    <div className={styles.waiting}>
      {/* The words below say what is waited for, with or without it. */}
      <Guard instead={() => null}>
        <Suspense fallback={null}>
          <RigSketch rig={rig} editing={undefined} />
        </Suspense>
      </Guard>
      <p>{coming ? sayPage("scenePlace.coming") : sayPage("scenePlace.none")}</p>
    </div>
  );
}

const NotDrawn = ({ message }: { message: string }) => (
  <div className={styles.waiting} role="alert">
    <p>{sayPage("scenePlace.notDrawnBecause", { message })}</p>
  </div>
);
