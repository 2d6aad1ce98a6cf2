/** What a sandbox of the page is given: ids and delays are the browser's own. */
import type { Services } from "@secondline/workbench";

export const pageServices = (given: Omit<Services, "newId" | "later">): Services => ({
  ...given,
  newId: () => crypto.randomUUID(),
  later,
});

export function later(milliseconds: number, action: () => void): () => void {
  const timer = setTimeout(action, milliseconds);
  return () => clearTimeout(timer);
}
