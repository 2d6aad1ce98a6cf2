import "./quietThree.ts";
import { Canvas } from "@react-three/fiber";
import { createStage, FIELD_OF_VIEW, largestTension, type NoteOptions, type Stage } from "@secondline/figures/scene";
import { type RefObject, useMemo } from "react";
import { ColorManagement } from "three";
import type { SceneProps } from "../sceneProps.ts";
import { AnchorGear } from "./AnchorGear.tsx";
import { CameraRig } from "./CameraRig.tsx";
import { Connections } from "./Connections.tsx";
import { FrameDriver } from "./FrameDriver.tsx";
import { Ghosts } from "./Ghosts.tsx";
import { Ground } from "./Ground.tsx";
import { Leash } from "./Leash.tsx";
import { createLook, type PartProps, type SceneLook } from "./look.ts";
import { NotesLayer } from "./NotesLayer.tsx";
import { Ring } from "./Ring.tsx";
import { SnapshotTaker } from "./SnapshotTaker.tsx";
import { useOwned } from "./useOwned.ts";
import { Walker } from "./Walker.tsx";
import { Webbing } from "./Webbing.tsx";

// Colours are used as they are displayed, so that the scene's paper is the page's paper.
ColorManagement.enabled = false;

export interface ThreeSceneProps extends SceneProps {
  readonly notesHost: RefObject<HTMLElement | null>;
  readonly onContext: (present: boolean) => void;
}

/** The scene in space. Drawn only when the clock, the camera or the data ask for it. */
export default function ThreeScene(props: ThreeSceneProps) {
  const { recording, rig, previous, gaveWay, theme, camera, showForces, selectedPart, weak } = props;
  const stage = useMemo(() => createStage(recording, rig, previous, gaveWay), [recording, rig, previous, gaveWay]);
  const look = useOwned(() => ownedLook(theme, stage), [theme, stage]);
  const options = useMemo<NoteOptions>(
    () => ({ showForces, selectedPart, weak, wide: camera === "overview" }),
    [showForces, selectedPart, weak, camera],
  );
  return (
    <Canvas
      legacy
      linear
      flat
      frameloop="demand"
      dpr={[1, 2]}
      camera={{ fov: (FIELD_OF_VIEW * 180) / Math.PI, near: 0.1, far: 14 * rig.span + 1200, up: [0, 0, 1] }}
      gl={{ antialias: true, powerPreference: "default" }}
      style={{ position: "absolute", inset: 0 }}
      aria-hidden
    >
      <color attach="background" args={[look.palette.paper]} />
      <FrameDriver stage={stage} look={look} clock={props.clock} onContext={props.onContext} />
      <CameraRig stage={stage} camera={camera} reducedMotion={props.reducedMotion} />
      <Ground gap={stage.gap} look={look} />
      <Rigging stage={stage} look={look} selectedPart={selectedPart} />
      <Ghosts stage={stage} look={look} />
      <Walker live={stage.live} look={look} />
      <NotesLayer stage={stage} look={look} host={props.notesHost} options={options} />
      {props.snapshot && <SnapshotTaker stage={stage} look={look} clock={props.clock} place={props.snapshot} />}
    </Canvas>
  );
}

function ownedLook(theme: SceneProps["theme"], stage: Stage): SceneLook & { dispose: () => void } {
  const look = createLook(theme, stage.gap, largestTension(stage.recording));
  return { ...look, dispose: () => look.table.value.dispose() };
}

function Rigging({ stage, look, selectedPart = "" }: PartProps & Pick<SceneProps, "selectedPart">) {
  return (
    <>
      {stage.live.backupNodes > 1 && (
        <Webbing live={stage.live} look={look} line="backup" chosen={selectedPart === "backup"} />
      )}
      <Webbing live={stage.live} look={look} line="main" chosen={selectedPart === "main"} />
      <Connections stage={stage} look={look} />
      <AnchorGear stage={stage} look={look} side="A" />
      <AnchorGear stage={stage} look={look} side="B" />
      <Leash stage={stage} look={look} chosen={selectedPart === "leash"} />
      <Ring stage={stage} look={look} chosen={selectedPart.startsWith("ring")} />
    </>
  );
}
