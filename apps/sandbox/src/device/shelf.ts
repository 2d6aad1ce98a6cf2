import { rememberingShelf, type Shelf } from "@secondline/workbench";

const kept = new Map<string, string>();
/** Keeps for as long as the page is open. */
const OF_THE_PAGE: Shelf = {
  getItem: (key) => kept.get(key) ?? null,
  setItem: (key, text) => void kept.set(key, text),
};

const shelf = rememberingShelf(() => {
  try {
    return localStorage;
  } catch {
    // That the browser keeps nothing was told at the start.
    return OF_THE_PAGE;
  }
});

/** The small storage that the browser keeps for this page on this device. */
export const deviceShelf = (): Shelf => shelf;
