/** What may be shown of the verdict: only what is of this very state. */
import type { Outcome, SearchResult } from "@secondline/scenarios";
import type { SandboxState } from "./state.ts";

type Needed = Pick<SandboxState, "document" | "assessment" | "run">;

/** Whether there can be a verdict at all: an entry that is being put right has none, nor a record that does not fit. */
const settled = ({ document, assessment, run }: Needed) =>
  document.issues.length === 0 && assessment.issues.length === 0 && run.verdict.key === assessment.key;

/** The complete search of this state; none where a longer look has found worse since. */
export const foundOf = (state: Needed): SearchResult | undefined =>
  settled(state) && !state.run.verdict.soFar ? state.run.verdict.found : undefined;

/** The complete outcome, else what is found so far; its verdict is never "holds" before the end. */
export const outcomeOf = (state: Needed): Outcome | undefined =>
  settled(state) ? (state.run.verdict.soFar ?? state.run.verdict.found?.outcome) : undefined;
