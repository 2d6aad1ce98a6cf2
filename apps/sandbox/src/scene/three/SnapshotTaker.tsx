import { useThree } from "@react-three/fiber";
import { type Stage, writeNotes } from "@secondline/figures/scene";
import { useEffect } from "react";
import type { SceneClock, SceneSnapshot, SnapshotPlace } from "../sceneProps.ts";
import { cameraProjector } from "./cameraProjector.ts";
import type { SceneLook } from "./look.ts";

interface Props {
  readonly stage: Stage;
  readonly look: SceneLook;
  readonly clock: SceneClock;
  readonly place: SnapshotPlace;
}

/** Takes the picture in space once more, at any density, with its words drawn in. */
export function SnapshotTaker({ stage, look, clock, place }: Props) {
  const gl = useThree((state) => state.gl);
  const scene = useThree((state) => state.scene);
  const camera = useThree((state) => state.camera);
  const size = useThree((state) => state.size);
  useEffect(() => {
    const { width, height } = size;
    /** The canvas is read at once: after this task its pixels are gone. */
    function image(density: number): HTMLCanvasElement {
      const usual = gl.getPixelRatio();
      const copy = document.createElement("canvas");
      try {
        gl.setPixelRatio(density);
        gl.render(scene, camera);
        copy.width = gl.domElement.width;
        copy.height = gl.domElement.height;
        copy.getContext("2d")?.drawImage(gl.domElement, 0, 0);
      } finally {
        gl.setPixelRatio(usual);
        gl.render(scene, camera);
      }
      return copy;
    }
    const snap = (): SceneSnapshot => ({
      width,
      height,
      time: clock.getSnapshot().time,
      image,
      draw: (ink) =>
        writeNotes(stage.notes, {
          ink,
          palette: look.palette,
          project: cameraProjector(camera, size),
          largest: stage.notes.largest,
          width,
          height,
          lettering: 1,
          covered: [],
        }),
    });
    place.current = snap;
    return () => {
      if (place.current === snap) place.current = null;
    };
  }, [gl, scene, camera, size, stage, look, clock, place]);
  return null;
}
