import { rememberingShelf, type Shelf } from "@secondline/workbench";

const FORGETTING: Shelf = { getItem: () => null, setItem: () => undefined };

const shelf = rememberingShelf(() => {
  try {
    return localStorage;
  } catch {
    // That the browser keeps nothing was told at the start.
    return FORGETTING;
  }
});

/** The small storage that the browser keeps for this page on this device. */
export const deviceShelf = (): Shelf => shelf;
