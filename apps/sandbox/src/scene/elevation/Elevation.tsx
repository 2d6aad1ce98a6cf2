import type { Ink } from "@secondline/figures";
import { createStage, type FlatView, largestTension, sceneWords } from "@secondline/figures/scene";
import { useEffect, useMemo, useRef } from "react";
import { PALETTES } from "../../design/palette.ts";
import styles from "../scene.module.css";
import type { SceneProps } from "../sceneProps.ts";
import { TensionLegend } from "../TensionLegend.tsx";
import { createElevationPainter } from "./elevationPainter.ts";
import { moveFlatView } from "./moveFlatView.ts";

export interface ElevationProps extends SceneProps {
  /** Inside another picture that already has a legend and a description. */
  readonly bare?: boolean;
  /** All of the ground is framed, however deep, and whoever draws over the picture is told its window whenever that changes. */
  readonly onView?: (view: FlatView, size: { readonly width: number; readonly height: number }) => void;
}

/** The rig seen square from the side, drawn flat. Needs no WebGL; follows the same clock. */
export function Elevation(props: ElevationProps) {
  const {
    recording,
    rig,
    previous,
    gaveWay,
    clock,
    theme,
    camera,
    showForces,
    selectedPart,
    weak,
    bare = false,
    snapshot,
    onView,
  } = props;
  const host = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const notes = useRef<HTMLDivElement>(null);
  const stage = useMemo(() => createStage(recording, rig, previous, gaveWay), [recording, rig, previous, gaveWay]);
  const words = useMemo(
    () => sceneWords(recording, rig, props.outcome, gaveWay),
    [recording, rig, props.outcome, gaveWay],
  );
  const wholeRig = camera !== "event";

  useEffect(() => {
    const painter = createElevationPainter({
      stage,
      canvas: canvas.current!,
      notesHost: notes.current!,
      palette: PALETTES[theme],
      theme,
      wholeRig,
      wholeGround: onView !== undefined,
      options: { showForces, selectedPart, weak, wide: wholeRig },
    });
    let asked = 0;
    const draw = () => {
      asked = 0;
      painter.paint(clock.getSnapshot().time);
      onView?.({ ...painter.view }, { ...painter.size });
    };
    const ask = () => {
      if (asked === 0) asked = requestAnimationFrame(draw);
    };
    const size = new ResizeObserver(() => {
      painter.resize();
      ask();
    });
    size.observe(host.current!);
    const keyHost = host.current!.closest<HTMLElement>("[data-scene]") ?? host.current!;
    const letGo = moveFlatView(keyHost, painter.view, painter.resize, ask);
    const unsubscribe = clock.subscribe(ask);
    ask();
    const snap = () => {
      const { time } = clock.getSnapshot();
      return { time, ...painter.size, draw: (ink: Ink) => painter.draw(ink, time) };
    };
    if (snapshot) snapshot.current = snap;
    return () => {
      cancelAnimationFrame(asked);
      unsubscribe();
      size.disconnect();
      letGo();
      if (snapshot?.current === snap) snapshot.current = null;
      painter.dispose();
    };
  }, [stage, clock, theme, wholeRig, showForces, selectedPart, weak, snapshot, onView]);

  const picture = (
    <div ref={host} className={styles.layer}>
      <canvas ref={canvas} className={styles.layer} style={{ width: "100%", height: "100%" }} />
      <div ref={notes} className={styles.notes} aria-hidden="true" />
    </div>
  );
  if (bare) return picture;
  return (
    <div className={styles.scene}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is moved with the arrow keys */}
      <div className={styles.stage} data-scene role="img" aria-label={words} tabIndex={0}>
        {picture}
      </div>
      <TensionLegend
        theme={theme}
        largest={largestTension(recording)}
        strengthKN={props.strengthKN}
        hasBackup={stage.live.backupNodes > 1}
        hasPrevious={previous !== undefined}
      />
    </div>
  );
}
