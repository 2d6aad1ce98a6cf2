/** The keys of a page for its documents: save, open, undo, redo. */

interface Key {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

export type PageKey = "save" | "open" | "undo" | "redo";

export function pageKey({ key, ctrlKey, metaKey, altKey, shiftKey }: Key): PageKey | undefined {
  if (!(ctrlKey || metaKey) || altKey) return undefined;
  switch (key.toLowerCase()) {
    case "s":
      return "save";
    case "o":
      return "open";
    case "y":
      return "redo";
    case "z":
      return shiftKey ? "redo" : "undo";
    default:
      return undefined;
  }
}
