/** What the scene is given. The same for the picture in space and for the flat elevation. */
import type { Recording } from "@secondline/engine";
import type { WeakPlace } from "@secondline/figures/scene";
import type { Rig } from "@secondline/rig";
import type { GaveWay, Outcome } from "@secondline/scenarios";
import type { SceneSnapshot } from "@secondline/workbench/pictures";
import type { RefObject } from "react";
import type { Theme } from "../design/palette.ts";

export type { GaveWay, Outcome, Recording, Rig, SceneSnapshot, Theme };

export type SceneCamera = "event" | "overview" | "elevation" | "anchor";

/** The part of the playback clock that the scene follows. */
export interface SceneClock {
  readonly getSnapshot: () => { readonly time: number };
  readonly subscribe: (listener: () => void) => () => void;
}

/** Where a scene puts the way to take its picture; null while there is none to take. */
export type SnapshotPlace = RefObject<(() => SceneSnapshot) | null>;

export interface SceneProps {
  readonly recording: Recording;
  /** The run before, shown faintly for comparison. */
  readonly previous?: Recording | undefined;
  readonly rig: Rig;
  readonly outcome?: Outcome | undefined;
  /** What gave way in this run, as its outcome names it. */
  readonly gaveWay?: readonly GaveWay[] | undefined;
  readonly clock: SceneClock;
  readonly theme: Theme;
  readonly camera: SceneCamera;
  /** The flat elevation, framed for the chosen camera. */
  readonly flat?: boolean;
  /** Arrows with their forces at anchors, ring and walker. */
  readonly showForces: boolean;
  /** Part pointed out, by its id in the outcome. */
  readonly selectedPart?: string | undefined;
  /** Named while no part is pointed out. */
  readonly weak?: WeakPlace | undefined;
  /** Strength marked on the tension scale: what 95 % of such webbing reaches [kN]. */
  readonly strengthKN?: number | undefined;
  readonly reducedMotion: boolean;
  readonly snapshot?: SnapshotPlace | undefined;
}
