import type { Shelf } from "@secondline/workbench";

/** The small storage that the browser keeps for this page on this device, or one that forgets where there is none. */
export function deviceShelf(): Shelf {
  try {
    return localStorage;
  } catch {
    return { getItem: () => null, setItem: () => undefined };
  }
}
