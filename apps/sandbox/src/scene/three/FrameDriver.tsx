import { useFrame, useThree } from "@react-three/fiber";
import { type Stage, sampleFrame } from "@secondline/figures/scene";
import { useEffect } from "react";
import type { SceneClock } from "../sceneProps.ts";
import type { SceneLook } from "./look.ts";

interface FrameDriverProps {
  readonly stage: Stage;
  readonly look: SceneLook;
  readonly clock: SceneClock;
  readonly onContext: (present: boolean) => void;
}

/** Samples the moment before anything else in a frame, and asks for frames when the clock moves. */
export function FrameDriver({ stage, look, clock, onContext }: FrameDriverProps) {
  const invalidate = useThree((state) => state.invalidate);
  const canvas = useThree((state) => state.gl.domElement);
  useEffect(() => clock.subscribe(() => invalidate()), [clock, invalidate]);
  useEffect(() => {
    const lost = (event: Event) => {
      event.preventDefault();
      onContext(false);
    };
    const restored = () => {
      onContext(true);
      invalidate();
    };
    canvas.addEventListener("webglcontextlost", lost);
    canvas.addEventListener("webglcontextrestored", restored);
    return () => {
      canvas.removeEventListener("webglcontextlost", lost);
      canvas.removeEventListener("webglcontextrestored", restored);
    };
  }, [canvas, onContext, invalidate]);
  useFrame(({ size }) => {
    const { time } = clock.getSnapshot();
    sampleFrame(stage.live, time);
    if (stage.previous) sampleFrame(stage.previous, Math.min(time, stage.previous.recording.duration));
    look.viewport.value.set(size.width, size.height);
  }, -3);
  return null;
}
