/** The report of the open rig. */
import { sayFiles } from "@secondline/words/page/files";
import { foundOf, type Sandbox } from "@secondline/workbench";
import { saveReport } from "./saveReport.ts";

/** The report rests on the whole search; what is not computed yet is computed first. */
export async function makeReport(sandbox: Pick<Sandbox, "store" | "actions">): Promise<void> {
  const { store, actions } = sandbox;
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
  await saveReport(sandbox, found.outcome, new Date());
  actions.announce(sayFiles("makeReport.reportSaved"));
}
