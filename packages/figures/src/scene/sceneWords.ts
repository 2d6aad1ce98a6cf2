/** The words of the scene on a run: made in the words package, shortened where there is no room. */
import type { Recording, RunEvent } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { GaveWay, Outcome } from "@secondline/scenarios";
import { capital, englishWords as words } from "@secondline/words";

/** An event, with its place, load or speed if it has one; "" for events without a mark. */
export function eventWords(
  event: RunEvent,
  rig: Rig,
  gaveWay: readonly GaveWay[] = [],
): { readonly full: string; readonly short: string } {
  const short = words.moment([event], false, { rig, gaveWay });
  switch (event.kind) {
    case "cut":
    case "break":
      // Tapes are made to part, and many part at once. Their loads would only crowd the picture.
      if (event.part === "tape") return { full: capital(short), short: "" };
      return { full: words.placedMoment(rig, event, gaveWay), short: capital(short) };
    case "slip":
    case "ground":
      return { full: words.placedMoment(rig, event, gaveWay), short };
    case "leashTaut":
    case "letGo":
    case "lowest":
    case "ringOff":
      return { full: "", short: "" };
  }
}

/** The scene in words, for those who do not see it. */
export function sceneWords(
  recording: Recording,
  rig: Rig,
  outcome?: Outcome,
  gaveWay: readonly GaveWay[] = [],
): string {
  return [...words.run(rig, recording, gaveWay), ...(outcome ? [words.verdict(rig, outcome)] : [])].join(" ");
}
