/** What the walker is doing when something fails. */

import { type Phrase, phrase } from "../facts/phrase.ts";
import { fraction, type KnownBefore } from "./eventKind.ts";

export const POSES = ["hanging", "standing", "caught"] as const;
export type Pose = (typeof POSES)[number];

/** Feet leave the line by a loss of balance; when the line itself goes they lose it faster [s]. */
export const LET_GO_TIME_FALL = 0.3;
export const LET_GO_TIME_CUT = 0.15;
/** A moment of rest before something fails, so that its going is seen [s]. */
export const REST_BEFORE = 0.05;

/** Besides the peak of the leash a failure in a catch is looked at this much earlier and later [s]. */
export const SEARCHED_MOMENTS = [-0.1, 0.1] as const;

/** How much earlier or later, as the end of a key; nothing at the peak itself. */
export const lateKey = (late = 0): string => {
  const text = fraction(Math.abs(late));
  return text === "0" ? "" : `${late < 0 ? "-" : "+"}${text}`;
};

/** When something fails [s]; of a walker being caught `late` after the leash's hardest pull, which must be known then. */
export function momentOf(pose: Pose, late: number, { catchTime }: KnownBefore): number {
  if (pose !== "caught") return REST_BEFORE;
  if (catchTime === undefined)
    throw new Error("What fails in a catch needs to know when the leash pulls hardest in it.");
  return Math.max(0, catchTime + late);
}

const ENGLISH: Readonly<Record<Pose, string>> = { hanging: "hanging", standing: "standing", caught: "being caught" };

/** `late`: how much after the peak of the leash, for a walker being caught [s]. */
export function posePhrase(pose: Pose, late = 0): Phrase {
  if (late === 0) return phrase(`pose.${pose}`, ENGLISH[pose]);
  const when = { time: { seconds: Math.abs(late) } };
  return late < 0
    ? phrase("pose.caughtBefore", "{time} before the peak of the catch", when)
    : phrase("pose.caughtAfter", "{time} after the peak of the catch", when);
}
