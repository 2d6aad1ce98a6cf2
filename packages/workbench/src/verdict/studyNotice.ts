/** What stands beside a verdict while it is not being looked for: what came in the way of its search, and the one step from there. */
import { sayPage } from "@secondline/words/page/page";
import { mayTurn } from "../inHand/soFar.ts";
import type { SandboxState } from "../inHand/state.ts";
import { foundOf } from "../inHand/verdictOf.ts";
import { settledWords, shortReason, stoppedWords } from "./studyWords.ts";

export interface StudyNotice {
  readonly text: string;
  /** It is told at once to who does not see it. */
  readonly isAlert: boolean;
  readonly step: string;
  /** What the step does. */
  readonly does: "lookOn" | "lookLonger";
}

/** Undefined while the search goes on, and where nothing is left to do. */
export function studyNotice(state: SandboxState): StudyNotice | undefined {
  const { study, verdict } = state.run;
  switch (study.kind) {
    case "busy":
    case "waiting":
      return undefined;
    case "stopped":
      return {
        text: `${sayPage("studyState.stopped")} ${stoppedWords(verdict.soFar)}`,
        isAlert: false,
        step: sayPage("studyState.lookOn"),
        does: "lookOn",
      };
    case "failed":
      return {
        text: sayPage("studyState.notComputed", { message: shortReason(study.message) }),
        isAlert: true,
        step: sayPage("studyState.tryAgain"),
        does: "lookOn",
      };
    case "idle":
    case "done": {
      // What lies near a limit is settled by more runs.
      const outcome = foundOf(state)?.outcome;
      if (!outcome || !mayTurn(outcome)) return undefined;
      return {
        text: settledWords(outcome),
        isAlert: false,
        step: sayPage("studyState.lookLonger"),
        does: "lookLonger",
      };
    }
  }
}
