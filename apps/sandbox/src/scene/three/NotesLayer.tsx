import { useFrame, useThree } from "@react-three/fiber";
import type { NoteOptions, Projector, Stage } from "@secondline/figures/scene";
import { type RefObject, useEffect, useRef } from "react";
import { coveredBoxes } from "../notes/coveredBoxes.ts";
import { createNotesPainter, type NotesPainter } from "../notes/notesPainter.ts";
import { cameraProjector } from "./cameraProjector.ts";
import type { SceneLook } from "./look.ts";

interface NotesLayerProps {
  readonly stage: Stage;
  readonly look: SceneLook;
  readonly host: RefObject<HTMLElement | null>;
  readonly options: NoteOptions;
}

/** Dimensions, arrows, marks and names over the picture; they are projected here, once per drawn frame. */
export function NotesLayer({ stage, look, host, options }: NotesLayerProps) {
  const painter = useRef<NotesPainter | null>(null);
  const camera = useThree((state) => state.camera);
  const size = useThree((state) => state.size);
  const project = useRef<Projector>(() => undefined);
  const invalidate = useThree((state) => state.invalidate);

  useEffect(() => {
    project.current = cameraProjector(camera, size);
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
