/** A small storage of text by key, as a browser keeps one for a page. Both throw what the storage throws. */
export interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

/**
 * Keeps a copy of what cannot be read under a key of its own. A full storage loses the copy, not the original: that
 * stays where it is until something new is kept.
 */
export function setAside(shelf: Shelf, key: string, text: string): void {
  try {
    shelf.setItem(`${key}.unreadable`, text);
  } catch {
    // See above.
  }
}
