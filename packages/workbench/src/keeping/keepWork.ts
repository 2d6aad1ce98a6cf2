/** Keeps the work of a page from now on; where it cannot be kept, that is told. */

import { sayPage } from "@secondline/words/page/page";
import type { Sandbox } from "../inHand/sandbox.ts";
import { keepingTrouble } from "./shelf.ts";
import { type Autosave, type AutosaveServices, startAutosave, type WorkKeeper } from "./work.ts";

export interface KeepServices extends Omit<AutosaveServices, "onTrouble"> {
  /** True for the one page that may write. */
  readonly claim: () => Promise<boolean>;
}

/** `works`: undefined where the device keeps nothing. */
export async function keepWork(
  sandbox: Sandbox,
  works: WorkKeeper | undefined,
  { claim, ...services }: KeepServices,
): Promise<Autosave | undefined> {
  const tell = (text: string) => sandbox.actions.tell({ tone: "fault", text });
  if (works && (await claim()))
    return startAutosave(sandbox, works, { ...services, onTrouble: (error) => tell(saveTrouble(error)) });
  tell(sayPage(works ? "boot.openInAnotherTab" : "boot.browserKeepsNothing"));
  return undefined;
}

const saveTrouble = (error: unknown): string => sayPage("autosave.notKept", { reason: keepingTrouble(error) });
