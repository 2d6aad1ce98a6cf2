import { useFrame, useThree } from "@react-three/fiber";
import { type Stage, sceneView, type View } from "@secondline/figures/scene";
import { keyMove } from "@secondline/workbench";
import CameraControls from "camera-controls";
import { useEffect, useMemo, useRef } from "react";
import {
  Box3,
  MathUtils,
  Matrix4,
  type PerspectiveCamera,
  Quaternion,
  Raycaster,
  Sphere,
  Spherical,
  Vector2,
  Vector3,
  Vector4,
} from "three";
import type { SceneCamera } from "../sceneProps.ts";

CameraControls.install({
  THREE: { Box3, Matrix4, MathUtils, Quaternion, Raycaster, Sphere, Spherical, Vector2, Vector3, Vector4 },
});

/** Turn by the arrow keys [rad], walk by shift and arrow keys [share of the distance], zoom by + and − [-]. */
const KEY_TURN = 0.12;
const KEY_WALK = 0.06;
const KEY_ZOOM = 0.85;

interface CameraRigProps {
  readonly stage: Stage;
  readonly camera: SceneCamera;
  readonly reducedMotion: boolean;
}

/** Moves the camera to the chosen view, and lets mouse, touch and keys move it from there. */
export function CameraRig({ stage, camera: wanted, reducedMotion }: CameraRigProps) {
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const canvas = useThree((state) => state.gl.domElement);
  const invalidate = useThree((state) => state.invalidate);
  const width = useThree((state) => state.size.width);
  const height = useThree((state) => state.size.height);
  const controls = useMemo(() => {
    camera.up.set(0, 0, 1);
    return new CameraControls(camera);
  }, [camera]);
  const shown = useRef("");

  useEffect(() => {
    controls.connect(canvas);
    controls.minDistance = 1.5;
    controls.maxDistance = 12 * stage.gap.span + 100;
    controls.smoothTime = 0.22;
    controls.draggingSmoothTime = 0.08;
    controls.dollyToCursor = true;
    const wake = () => invalidate();
    controls.addEventListener("update", wake);
    controls.addEventListener("control", wake);
    controls.addEventListener("transitionstart", wake);
    return () => {
      controls.removeAllEventListeners();
      controls.disconnect();
    };
  }, [controls, canvas, invalidate, stage]);

  useEffect(() => {
    const view = sceneView(stage, wanted, width, height);
    // The first picture and a changed size are not a journey.
    const travel = shown.current !== "" && shown.current !== wanted && !reducedMotion;
    shown.current = wanted;
    void controls.setLookAt(...view.position, ...view.target, travel);
    invalidate();
  }, [controls, stage, wanted, width, height, reducedMotion, invalidate]);

  useEffect(() => {
    const host = canvas.closest<HTMLElement>("[data-scene]");
    const onKey = (event: KeyboardEvent) => {
      if (!moveByKey(controls, event, () => sceneView(stage, wanted, width, height), !reducedMotion)) return;
      event.preventDefault();
      event.stopPropagation();
      invalidate();
    };
    host?.addEventListener("keydown", onKey);
    return () => host?.removeEventListener("keydown", onKey);
  }, [controls, canvas, stage, wanted, width, height, reducedMotion, invalidate]);

  useFrame((_, delta) => {
    if (controls.update(Math.min(delta, 1 / 30))) invalidate();
    camera.updateMatrixWorld();
  }, -2);
  return null;
}

function moveByKey(controls: CameraControls, event: KeyboardEvent, home: () => View, smooth: boolean): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) return false;
  const walk = KEY_WALK * controls.distance;
  const move = event.key.startsWith("Arrow") ? keyMove(event) : undefined;
  if (move?.isLarge) void controls.truck(move.across * walk, -move.up * walk, smooth);
  else if (move) void controls.rotate(move.across * KEY_TURN, -move.up * KEY_TURN, smooth);
  else if (event.key === "+" || event.key === "=") void controls.dollyTo(controls.distance * KEY_ZOOM, smooth);
  else if (event.key === "-") void controls.dollyTo(controls.distance / KEY_ZOOM, smooth);
  else if (event.key === "0") {
    const view = home();
    void controls.setLookAt(...view.position, ...view.target, smooth);
  } else return false;
  return true;
}
