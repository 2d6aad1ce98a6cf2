/** The scene alone, with a made-up recording: for looking at it while working on it. Not part of the app. */
import "../../src/design/fonts.css";
import "../../src/design/tokens.css";
import { createRoot } from "react-dom/client";
import { createPlaybackClock } from "../../src/clock/playbackClock.ts";
import { type SceneCamera, SceneView } from "../../src/scene/index.ts";
import { syntheticRecording, syntheticRig } from "../syntheticRecording.ts";

const query = new URLSearchParams(location.search);
const theme = query.get("theme") === "dark" ? "dark" : "light";
document.documentElement.dataset.theme = theme;
document.body.style.margin = "0";
const recording = syntheticRecording();
const rig = syntheticRig();
const previous = query.has("previous") ? syntheticRecording({ slack: 0.02 }) : undefined;
const clock = createPlaybackClock({ duration: recording.duration, frameStep: 1 / recording.frames.rate });
clock.seek(Number(query.get("t") ?? 0));
const root = createRoot(document.getElementById("root")!);

function show(camera: SceneCamera): void {
  root.render(
    <SceneView
      recording={recording}
      rig={rig}
      previous={previous}
      clock={clock}
      theme={theme}
      camera={camera}
      showForces={query.has("forces")}
      selectedPart={query.get("part") ?? undefined}
      strengthKN={Number(query.get("strength") ?? 22)}
      reducedMotion={query.has("still")}
    />,
  );
}
show((query.get("camera") as SceneCamera | null) ?? "event");
Object.assign(globalThis, { clock, show });
if (query.has("play")) clock.play();
