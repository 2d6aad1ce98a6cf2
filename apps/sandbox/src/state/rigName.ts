/** What is said of keeping the current work. */
import { sayPage } from "@secondline/words/page/page";
export function saveTrouble(error: unknown): string {
  const full = error instanceof DOMException && error.name === "QuotaExceededError";
  const reason = full ? sayPage("autosave.storageFull") : error instanceof Error ? error.message : String(error);
  return sayPage("autosave.notKept", { reason });
}

export function rigName(document: { readonly [key: string]: unknown }): string {
  return typeof document.name === "string" && document.name.trim() !== ""
    ? document.name
    : sayPage("autosave.rigWithoutName");
}
