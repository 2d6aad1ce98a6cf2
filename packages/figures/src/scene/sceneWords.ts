/** What the scene says of a run: made in the words package, shortened where there is no room. */
import type { Recording, RunEvent } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { GaveWay, Outcome } from "@secondline/scenarios";
import { capital, englishWords as words } from "@secondline/words";

/** What happened, with place, load or speed where there is one; "" for events that nobody needs to see marked. */
export function eventWords(
  event: RunEvent,
  rig: Rig,
  gaveWay: readonly GaveWay[] = [],
): { readonly full: string; readonly short: string } {
  const short = words.moment([event], false, { rig, gaveWay });
  switch (event.kind) {
    case "cut":
    case "break":
      // Tapes are made to go and many go at once: their loads would only crowd the picture.
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
