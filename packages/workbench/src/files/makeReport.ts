/** The report of the open rig. */

import type { Outcome } from "@secondline/scenarios";
import { sayFiles } from "@secondline/words/page/files";
import type { Sandbox } from "../inHand/sandbox.ts";
import { foundOf } from "../inHand/verdictOf.ts";

/** `save`: writes the report of the whole search. The report rests on the whole search; what is not computed yet is computed first. */
export async function makeReport(
  { store, actions }: Pick<Sandbox, "store" | "actions">,
  save: (outcome: Outcome) => Promise<void>,
): Promise<void> {
  const { key } = store.getState().assessment;
  if (!foundOf(store.getState())) {
    actions.tell({ tone: "word", text: sayFiles("makeReport.computing") });
    await actions.lookOn();
  }
  const state = store.getState();
  const found = foundOf(state);
  if (!found || state.assessment.key !== key) {
    const why = state.assessment.key === key ? sayFiles("makeReport.notToEnd") : sayFiles("makeReport.rigChanged");
    actions.tell({ tone: "fault", text: sayFiles("makeReport.reportNotMade", { why }) });
    return;
  }
  await save(found.outcome);
  actions.announce(sayFiles("makeReport.reportSaved"));
}
