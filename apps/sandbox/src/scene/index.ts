export { SceneView } from "./SceneView.tsx";
export type { SceneCamera, SceneProps, SceneSnapshot, SnapshotPlace } from "./sceneProps.ts";
