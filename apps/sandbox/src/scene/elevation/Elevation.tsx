import type { Ink } from "@secondline/figures";
import { createStage, type FlatView } from "@secondline/figures/scene";
import { useEffect, useMemo, useRef } from "react";
import { PALETTES } from "../../design/palette.ts";
import styles from "../scene.module.css";
import type { SceneProps } from "../sceneProps.ts";
import { createElevationPainter } from "./elevationPainter.ts";
import { moveFlatView } from "./moveFlatView.ts";

export interface ElevationProps extends SceneProps {
  /** All of the ground is framed, however deep, and whoever draws over the picture is told its window whenever that changes. */
  readonly onView?: (view: FlatView, size: { readonly width: number; readonly height: number }) => void;
}

/** The rig seen square from the side, drawn flat, inside of a picture that describes it. Needs no WebGL; follows the same clock. */
export function Elevation(props: ElevationProps) {
  const { recording, rig, previous, gaveWay, clock, theme, camera, showForces, selectedPart, weak } = props;
  const { snapshot, onView } = props;
  const host = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const notes = useRef<HTMLDivElement>(null);
  const stage = useMemo(() => createStage(recording, rig, previous, gaveWay), [recording, rig, previous, gaveWay]);
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
    let isSized = false;
    const draw = () => {
      cancelAnimationFrame(asked);
      asked = 0;
      painter.paint(clock.getSnapshot().time);
      onView?.({ ...painter.view }, { ...painter.size });
    };
    const ask = () => {
      if (asked === 0 && isSized) asked = requestAnimationFrame(draw);
    };
    // The first picture too is drawn here, where the size is known: asked for before, it would lay out the page once more.
    const size = new ResizeObserver(() => {
      isSized = true;
      painter.resize();
      draw();
    });
    size.observe(host.current!);
    const keyHost = host.current!.closest<HTMLElement>("[data-scene]") ?? host.current!;
    const letGo = moveFlatView(keyHost, painter.view, painter.resize, ask);
    const unsubscribe = clock.subscribe(ask);
    const snap = () => {
      if (!isSized) painter.resize();
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

  return (
    <div ref={host} className={styles.layer}>
      <canvas ref={canvas} className={styles.layer} style={{ width: "100%", height: "100%" }} />
      <div ref={notes} className={styles.notes} aria-hidden="true" />
    </div>
  );
}
