import { largestTension, sceneWords } from "@secondline/figures/scene";
import { sayPage } from "@secondline/words/page/page";
import { lazy, Suspense, useCallback, useEffect, useMemo, useRef, useState } from "react";
import { Guard } from "../design/Guard.tsx";
import { Elevation } from "./elevation/Elevation.tsx";
import styles from "./scene.module.css";
import type { SceneProps, SceneSnapshot } from "./sceneProps.ts";
import { TensionLegend } from "./TensionLegend.tsx";
import { hasWebGL } from "./webgl.ts";

const ThreeScene = lazy(() => import("./three/ThreeScene.tsx"));
const KEYS = sayPage("sceneView.keys");

/**
 * The rig and what happens to it. In space where the browser can; as a flat side elevation where it cannot, when the
 * elevation is asked for, and until the part that draws in space has arrived.
 */
export function SceneView(props: SceneProps) {
  const { recording, rig, outcome, gaveWay, theme, camera, strengthKN, weak } = props;
  const notesHost = useRef<HTMLDivElement>(null);
  const [present, setPresent] = useState(true);
  const [failed, setFailed] = useState(false);
  const onFailure = useCallback(() => setFailed(true), []);
  const possible = useMemo(hasWebGL, []) && !failed;
  const flatAsked = props.flat === true || camera === "elevation";
  const flat = flatAsked || !possible || !present;
  // The canvas in space is kept once made: coming back from the elevation costs nothing.
  const spaceWanted = useRef(false);
  if (!flatAsked) spaceWanted.current = true;
  const words = useMemo(() => sceneWords(recording, rig, outcome, gaveWay), [recording, rig, outcome, gaveWay]);
  const said = weak ? `${words} ${weak.text}.` : words;
  const lastCamera = useRef(camera);
  if (camera !== "elevation") lastCamera.current = camera;
  const flatSnapshot = useRef<(() => SceneSnapshot) | null>(null);
  const spaceSnapshot = useRef<(() => SceneSnapshot) | null>(null);
  const { snapshot } = props;
  useEffect(() => {
    if (!snapshot) return;
    // Until the picture in space has arrived, the elevation stands in for it.
    snapshot.current = () => {
      const snap = (flat ? null : spaceSnapshot.current) ?? flatSnapshot.current;
      if (!snap) throw new Error(sayPage("sceneView.noPicture"));
      return snap();
    };
    return () => {
      snapshot.current = null;
    };
  }, [snapshot, flat]);
  const elevation = <Elevation {...props} snapshot={flatSnapshot} />;
  return (
    <div className={styles.scene}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is turned with the arrow keys */}
      <div className={styles.stage} data-scene role="img" aria-label={`${said} ${KEYS}`} tabIndex={0}>
        {flat && elevation}
        {possible && spaceWanted.current && (
          <div className={`${styles.layer} ${flat ? styles.hidden : ""}`}>
            {/* Where the picture in space cannot be made, the elevation takes its place; the rest of the page never notices. */}
            <Guard instead={() => null} onBroken={onFailure}>
              <Suspense fallback={flat ? null : elevation}>
                <ThreeScene
                  {...props}
                  camera={lastCamera.current}
                  notesHost={notesHost}
                  onContext={setPresent}
                  snapshot={spaceSnapshot}
                />
              </Suspense>
            </Guard>
            <div ref={notesHost} className={styles.notes} aria-hidden="true" />
          </div>
        )}
      </div>
      <TensionLegend
        theme={theme}
        largest={largestTension(recording)}
        strengthKN={strengthKN}
        hasBackup={recording.frames.backupNodes > 1}
        hasPrevious={props.previous !== undefined}
      />
    </div>
  );
}
