/** The report of the rig in hand. */
import { foundOf, type Sandbox } from "@secondline/workbench";
import { saveReport } from "./saveReport.ts";

/** The report rests on the whole search; what is not computed yet is computed first. */
export async function makeReport(sandbox: Pick<Sandbox, "store" | "actions">): Promise<void> {
  const { store, actions } = sandbox;
  const { key } = store.getState().assessment;
  if (!foundOf(store.getState())) {
    actions.tell({ tone: "word", text: "Computing every what-if for the report. It is saved when they are done." });
    await actions.lookOn();
  }
  const state = store.getState();
  const found = foundOf(state);
  if (!found || state.assessment.key !== key) {
    const why = state.assessment.key === key ? "its what-ifs were not computed to the end" : "the rig was changed";
    actions.tell({ tone: "fault", text: `The report was not made, because ${why}.` });
    return;
  }
  await saveReport(sandbox, found.outcome, new Date());
  actions.announce("The report is saved.");
}
