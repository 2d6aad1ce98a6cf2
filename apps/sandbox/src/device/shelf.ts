import type { Shelf } from "@secondline/workbench";

/** The small storage that the browser keeps for this page on this device; if the browser has none, a storage that forgets. */
export function deviceShelf(): Shelf {
  try {
    return localStorage;
  } catch {
    return { getItem: () => null, setItem: () => undefined };
  }
}
