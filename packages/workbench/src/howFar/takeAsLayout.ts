import { howFarWords } from "@secondline/words/howFar";
import type { WrittenRig } from "../documents/documents.ts";
import type { Actions } from "../inHand/sandbox.ts";
import { type Layouts, LETTERS, MOST_LAYOUTS } from "../layouts/layouts.ts";

const { say } = howFarWords;

/** Takes a value of a sweep over as a layout beside the others, which can be taken back; `at`: the value in words. */
export function takeAsLayout(
  layouts: Pick<Layouts, "store" | "add" | "remove">,
  document: WrittenRig,
  at: string,
  { tell, look, announce }: Pick<Actions, "tell" | "look" | "announce">,
): void {
  const { store, add, remove } = layouts;
  if (store.getState().layouts.length >= MOST_LAYOUTS) {
    tell({ tone: "fault", text: say("took.full") });
    return;
  }
  const added = add({ document, goodDocument: document });
  if (!added) return;
  const letter = LETTERS[store.getState().layouts.indexOf(added)]!;
  const text = say("took.layout", { at, letter });
  tell({ tone: "word", text, action: { label: say("took.back"), run: () => void remove(added.id) } });
  look({ view: "layouts" });
  announce(text);
}
