/** The state of a record on a day, put into the rig in hand. */
import { applyWear, type WearRecord } from "@secondline/strength";
import type { Sandbox } from "../state/sandbox.ts";
import { dateWords } from "./days.ts";
import { wornDocument } from "./rigDocument.ts";

/** One undoable step; the verdict is computed again by the store, as after any change. */
export function applyTo({ store, actions }: Sandbox, record: WearRecord, on: string): void {
  const { rig, goodDocument } = store.getState().document;
  const { rig: worn, notes } = applyWear(rig, record, on);
  const document = wornDocument(goodDocument, rig, worn);
  actions.replaceRig(document, `wear as of ${dateWords(on)} put into the rig`);
  actions.tell({
    tone: "word",
    text: `The rig now has the wear of ${dateWords(on)}; its verdict is computed again.`,
    ...(notes.length > 0 ? { details: notes } : {}),
    action: {
      label: "Take it back",
      run() {
        // Undo takes back the last change; after another one the rig's own undo leads here step by step.
        if (store.getState().document.history.present === document) actions.undo();
        else
          actions.tell({
            tone: "word",
            text: "The rig has been changed since. Undo in the rig's view goes back step by step.",
          });
      },
    },
  });
}
