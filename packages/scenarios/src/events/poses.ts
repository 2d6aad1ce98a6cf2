/** What the walker is doing when something fails. */
import { type Phrase, phrase } from "./phrase.ts";

export const POSES = ["hanging", "standing", "caught"] as const;
export type Pose = (typeof POSES)[number];

/** Feet leave the line by a loss of balance; when the line itself goes they lose it faster [s]. */
export const LET_GO_FALL = 0.3;
export const LET_GO_CUT = 0.15;
/** A moment of rest before something fails, so that its going is seen [s]. */
export const REST_BEFORE = 0.05;

const ENGLISH: Readonly<Record<Pose, string>> = { hanging: "hanging", standing: "standing", caught: "being caught" };

export const posePhrase = (pose: Pose): Phrase => phrase(`pose.${pose}`, ENGLISH[pose]);
