import { sayPage } from "@secondline/words/page/page";
import { outcomeOf, type PlaybackClock } from "@secondline/workbench";
import type { weakPlace } from "@secondline/workbench/weakPlace";
import { Component, type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import type { Theme } from "../design/palette.ts";
import { useReducedMotion } from "../design/useMedia.ts";
import { useSoon } from "../design/useSoon.ts";
import { useSavePictures } from "../files/useSavePictures.ts";
import { RigSketch } from "../rigSheet/RigSketch.tsx";
import { type SceneSnapshot, SceneView, type SnapshotPlace } from "../scene/index.ts";
import { useRecordings, useSandbox } from "../state/useSandbox.ts";
import { PrintedPictures } from "./PrintedPictures.tsx";
import styles from "./ScenePlace.module.css";
import { SceneTools } from "./SceneTools.tsx";
import { useFallIsComing } from "./useFallIsComing.ts";

/** The scene of the run in hand; before there is one, a drawing of the rig. */
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
        <SceneGuard key={shown.outcome.key}>
          <SceneView
            recording={current}
            previous={session.compare ? previous : undefined}
            rig={shown.assessed.rig}
            outcome={verdict}
            gaveWay={shown.outcome.gaveWay}
            clock={clock}
            theme={theme}
            camera={session.camera}
            showForces={session.showForces}
            selectedPart={session.selectedPart}
            weak={weak}
            strengthKN={main && main.strength5 / 1000}
            reducedMotion={reducedMotion}
            snapshot={snapshot}
          />
        </SceneGuard>
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
  return (
    <div className={styles.waiting}>
      <RigSketch rig={rig} editing={undefined} />
      <p>{coming ? sayPage("scenePlace.coming") : sayPage("scenePlace.none")}</p>
    </div>
  );
}

/** A scene that breaks must not take the numbers with it. */
class SceneGuard extends Component<{ children: ReactNode }, { message: string | undefined }> {
  override state = { message: undefined };
  static getDerivedStateFromError(error: unknown) {
    return { message: error instanceof Error ? error.message : String(error) };
  }
  override render() {
    if (this.state.message === undefined) return this.props.children;
    return (
      <div className={styles.waiting} role="alert">
        <p>{sayPage("scenePlace.notDrawnBecause", { message: this.state.message })}</p>
      </div>
    );
  }
}
