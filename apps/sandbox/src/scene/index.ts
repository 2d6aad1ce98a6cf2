export { Elevation } from "../elevation/Elevation.tsx";
export { SceneView } from "./SceneView.tsx";
export type { SceneCamera, SceneClock, SceneProps, SceneSnapshot, SnapshotPlace } from "./sceneProps.ts";
export { TensionLegend } from "./TensionLegend.tsx";
