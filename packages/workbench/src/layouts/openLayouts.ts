/** The layouts of a page: those kept on the device beside the open rig, and kept again with every change. */
import { sayLayouts } from "@secondline/words/page/layouts";
import type { Sandbox } from "../inHand/sandbox.ts";
import type { Services } from "../inHand/state.ts";
import { keepingTrouble, type Shelf } from "../keeping/shelf.ts";
import { readKeptLayouts, startKeeping } from "./keptLayouts.ts";
import { createLayouts, type Layouts } from "./layouts.ts";

export interface OpenedLayouts {
  readonly layouts: Layouts;
  /** Writes at once what is still waiting: the page is about to go. */
  readonly flush: () => void;
}

/** Layouts that cannot be read, or not be kept, are told. */
export function openLayouts(sandbox: Sandbox, services: Services, shelf: Shelf): OpenedLayouts {
  const tell = (text: string) => sandbox.actions.tell({ tone: "fault", text });
  const found = readKeptLayouts(shelf, services.read);
  if (found.lost > 0) tell(sayLayouts("useLayouts.partlyRead"));
  const layouts = createLayouts(sandbox, services, found.layouts);
  const flush = startKeeping(layouts, shelf, {
    later: services.later,
    onTrouble(error) {
      const message = keepingTrouble(error);
      tell(sayLayouts("useLayouts.notKept", { message }));
    },
  });
  return { layouts, flush };
}
