import { useFrame, useThree } from "@react-three/fiber";
import { type RefObject, useEffect, useRef } from "react";
import { Vector3 } from "three";
import { coveredBoxes } from "../notes/coveredBoxes.ts";
import type { Projector } from "../notes/noteInk.ts";
import type { NoteOptions } from "../notes/notes.ts";
import { createNotesPainter, type NotesPainter } from "../notes/notesPainter.ts";
import type { Stage } from "../stage.ts";
import type { Look } from "./look.ts";

interface NotesLayerProps {
  readonly stage: Stage;
  readonly look: Look;
  readonly host: RefObject<HTMLElement | null>;
  readonly options: NoteOptions;
}

const seen = new Vector3();
/** Where a point behind the camera is taken to be, from the middle of the picture [px]. */
const FAR_OUT = 1e5;

/** Dimensions, arrows, marks and names over the picture; they are projected here, once per drawn frame. */
export function NotesLayer({ stage, look, host, options }: NotesLayerProps) {
  const painter = useRef<NotesPainter | null>(null);
  const camera = useThree((state) => state.camera);
  const size = useThree((state) => state.size);
  const project = useRef<Projector>(() => undefined);
  const invalidate = useThree((state) => state.invalidate);

  useEffect(() => {
    project.current = (x, y, z, out) => {
      seen.set(x, y, z).applyMatrix4(camera.matrixWorldInverse);
      out[2] = seen.z < -0.1 ? 1 : 0;
      if (out[2] === 0) {
        const away = FAR_OUT / Math.max(Math.hypot(seen.x, seen.y), 1e-6);
        out[0] = 0.5 * size.width + away * seen.x;
        out[1] = 0.5 * size.height - away * seen.y;
        return;
      }
      seen.applyMatrix4(camera.projectionMatrix);
      out[0] = (0.5 + 0.5 * seen.x) * size.width;
      out[1] = (0.5 - 0.5 * seen.y) * size.height;
    };
    invalidate();
  }, [camera, size, invalidate]);

  useEffect(() => {
    const made = createNotesPainter(host.current!, look.palette);
    painter.current = made;
    invalidate();
    return () => {
      made.dispose();
      painter.current = null;
    };
  }, [host, look, invalidate]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: other options are another picture
  useEffect(() => invalidate(), [options, invalidate]);

  useFrame(() => {
    stage.notes.update(stage.live, options);
    painter.current?.paint(stage.notes, project.current, size.width, size.height, coveredBoxes(host.current));
  });
  return null;
}
