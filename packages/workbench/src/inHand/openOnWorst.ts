/**
 * Opens the page on the what-if that the verdict turns on: once the first look has told one, and again when everything has been looked
 * at. It ends as soon as anybody does anything: nothing jumps under a hand.
 */
import { whatIfKey, worstWhatIf } from "@secondline/scenarios";
import type { Sandbox } from "./sandbox.ts";
import type { SandboxState } from "./state.ts";
import { foundOf, outcomeOf } from "./verdictOf.ts";

/** `touched`: whether somebody has used the page by now. Returns what ends it before its time. */
export function openOnWorst({ store, actions }: Sandbox, touched: () => boolean): () => void {
  const { document, session } = store.getState();
  let { whatIf } = session;
  let hasLooked = false;
  const follow = (state: SandboxState) => {
    const isOurs =
      state.session.whatIf === whatIf && state.document.history.present.rig === document.history.present.rig;
    if (!isOurs || touched()) return end();
    const found = foundOf(state)?.outcome;
    const answer = found ?? (hasLooked || state.run.effort === "quick" ? undefined : outcomeOf(state));
    if (!answer) return;
    hasLooked = true;
    if (found) end();
    const worst = worstWhatIf(answer);
    if (!worst || worst.key === whatIfKey(whatIf)) return;
    whatIf = worst.whatIf;
    actions.chooseWhatIf(whatIf);
  };
  const end = store.subscribe(follow);
  follow(store.getState());
  return end;
}
