/** The small storage that the browser keeps for this page on this device. */
export interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

/** The browser's storage, or one that forgets where there is none. */
export function deviceShelf(): Shelf {
  try {
    return localStorage;
  } catch {
    return { getItem: () => null, setItem: () => undefined };
  }
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
