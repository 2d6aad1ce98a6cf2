/**
 * The scene alone, for looking at it while working on it; not part of the app. With a made-up recording, or with one
 * from a file: `?file=URL` of JSON { recording, rig }.
 */
import "../../src/design/fonts.css";
import "../../src/design/tokens.css";
import { _roots } from "@react-three/fiber";
import type { Recording, Rig } from "@secondline/scenarios";
import { createRoot } from "react-dom/client";
import { syntheticRecording, syntheticRig } from "../../../../packages/figures/test/syntheticRecording.ts";
import { pageClock } from "../../src/clock/pageClock.ts";
import { SceneView } from "../../src/scene/SceneView.tsx";
import type { SceneCamera, SceneProps } from "../../src/scene/sceneProps.ts";

/** Arrays of numbers are kept as base64 of their bytes. */
async function loaded(file: string): Promise<{ recording: Recording; rig: Rig }> {
  const revive = (_: string, value: { f32?: string } | null) =>
    value?.f32 === undefined
      ? value
      : new Float32Array(Uint8Array.from(atob(value.f32), (c) => c.charCodeAt(0)).buffer);
  return JSON.parse(await (await fetch(file)).text(), revive);
}

const query = new URLSearchParams(location.search);
const theme = query.get("theme") === "dark" ? "dark" : "light";
document.documentElement.dataset.theme = theme;
document.body.style.margin = "0";
const file = query.get("file");
const { recording, rig } = file ? await loaded(file) : { recording: syntheticRecording(), rig: syntheticRig() };
const previous = query.has("previous") ? syntheticRecording({ slack: 0.02 }) : undefined;
const clock = pageClock({ duration: recording.duration, frameStep: 1 / recording.frames.rate });
clock.seek(Number(query.get("t") ?? 0) * (query.has("share") ? recording.duration : 1));
const root = createRoot(document.getElementById("root")!);

function show(camera: SceneCamera, changes: Partial<SceneProps> = {}): void {
  root.render(
    <SceneView
      recording={recording}
      rig={rig}
      previous={previous}
      clock={clock}
      theme={theme}
      camera={camera}
      flat={query.has("flat")}
      showForces={query.has("forces")}
      selectedPart={query.get("part") ?? undefined}
      strengthKN={Number(query.get("strength") ?? 22)}
      reducedMotion={query.has("still")}
      {...changes}
    />,
  );
}
show((query.get("camera") as SceneCamera | null) ?? "event");
/** What the graphics card holds, per canvas: must not grow. */
const held = () => [..._roots.values()].map(({ store }) => ({ ...store.getState().gl.info.memory }));
Object.assign(globalThis, { clock, show, recording, held, unmount: () => root.unmount() });
if (query.has("play")) clock.play();
