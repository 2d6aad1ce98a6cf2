/** What is said of keeping the current work. */
import { sayPage } from "@secondline/words/page/page";
import { keepingTrouble } from "@secondline/workbench";

export const saveTrouble = (error: unknown): string => sayPage("autosave.notKept", { reason: keepingTrouble(error) });

export function rigName(document: { readonly [key: string]: unknown }): string {
  return typeof document.name === "string" && document.name.trim() !== ""
    ? document.name
    : sayPage("autosave.rigWithoutName");
}
