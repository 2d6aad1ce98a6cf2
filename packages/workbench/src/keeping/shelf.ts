import { sayPage } from "@secondline/words/page/page";

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

/** A storage that knows what the device did not keep, for as long as the page is open. What the device throws is thrown on. */
export function rememberingShelf(device: () => Shelf): Shelf {
  const unkept = new Map<string, string>();
  return {
    getItem: (key) => unkept.get(key) ?? device().getItem(key),
    setItem(key, value) {
      try {
        device().setItem(key, value);
        unkept.delete(key);
      } catch (error) {
        unkept.set(key, value);
        throw error;
      }
    },
  };
}

/** The reason why a device keeps nothing, as the end of a sentence. */
export function keepingTrouble(error: unknown): string {
  const { name, message } = error instanceof Error ? error : { name: "", message: String(error) };
  return name === "QuotaExceededError" ? sayPage("autosave.storageFull") : message;
}
