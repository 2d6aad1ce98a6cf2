/** A link to what is in sight. */

import { sayFiles } from "@secondline/words/page/files";
import type { PlaybackClock, Sandbox } from "@secondline/workbench";
import { linkHash } from "@secondline/workbench/link";

type Shared = Pick<Sandbox, "store" | "actions"> & { readonly clock: PlaybackClock };

/** Copies the link, or shows it where nothing may be copied. */
export async function shareLink({ store, actions, clock }: Shared): Promise<void> {
  const { document, session } = store.getState();
  const { time } = clock.getSnapshot();
  const hash = linkHash({
    document: document.goodDocument,
    whatIf: session.whatIf,
    time,
    part: session.selectedPart,
    camera: session.camera,
  });
  const link = location.href.replace(/#.*$/, "") + hash;
  try {
    await navigator.clipboard.writeText(link);
    actions.tell({
      tone: "word",
      text: sayFiles("shareLink.copied"),
    });
  } catch {
    actions.tell({ tone: "word", text: sayFiles("shareLink.copyByHand"), details: [link] });
  }
}
