/** What is said of keeping the work in hand. */
export function saveTrouble(error: unknown): string {
  const full = error instanceof DOMException && error.name === "QuotaExceededError";
  const reason = full ? "its storage is full" : error instanceof Error ? error.message : String(error);
  return `Your work could not be kept on this device: ${reason}. Save the rig to a file, or it is lost when this page closes.`;
}

export function rigName(document: { readonly [key: string]: unknown }): string {
  return typeof document.name === "string" && document.name.trim() !== "" ? document.name : "Rig without a name";
}
