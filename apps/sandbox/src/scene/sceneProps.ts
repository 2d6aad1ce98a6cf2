/** What the scene is given. The same for the picture in space and for the flat elevation. */
import type { Recording } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { Outcome } from "@secondline/scenarios";
import type { Theme } from "../design/palette.ts";

export type { Outcome, Recording, Rig, Theme };

export type SceneCamera = "event" | "overview" | "elevation" | "anchor";

/** The part of the playback clock that the scene follows. */
export interface SceneClock {
  readonly getSnapshot: () => { readonly time: number };
  readonly subscribe: (listener: () => void) => () => void;
}

export interface SceneProps {
  readonly recording: Recording;
  /** The run before, shown faintly for comparison. */
  readonly previous?: Recording | undefined;
  readonly rig: Rig;
  readonly outcome?: Outcome | undefined;
  readonly clock: SceneClock;
  readonly theme: Theme;
  readonly camera: SceneCamera;
  /** The flat elevation, framed for the chosen camera. */
  readonly flat?: boolean;
  /** Arrows with their forces at anchors, ring and walker. */
  readonly showForces: boolean;
  /** Part pointed out, by its id in the outcome. */
  readonly selectedPart?: string | undefined;
  /** Strength marked on the tension scale [kN]. */
  readonly strengthKN?: number | undefined;
  readonly reducedMotion: boolean;
}
