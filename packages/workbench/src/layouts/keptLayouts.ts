/** Layouts kept on this device between visits. What cannot be read is set aside and told, never repaired. */

import { isGroup, readJson } from "@secondline/rig";
import { sayLayouts } from "@secondline/words/page/layouts";
import type { ReadRig, Services } from "../inHand/state.ts";
import { type Shelf, setAside } from "../keeping/shelf.ts";
import type { Layouts, WrittenLayout } from "./layouts.ts";

const KEY = "secondline.layouts";
/** The browser's storage for a page takes some five million characters. */
const FORMAT = { noun: sayLayouts("keptLayouts.listLayouts"), longest: 10_000_000 };

export function keepLayouts(shelf: Shelf, layouts: readonly WrittenLayout[]): void {
  shelf.setItem(KEY, JSON.stringify(layouts));
}

/** Layouts whose rigs can be read. `lost`: how many could not and were set aside. */
export function readKeptLayouts(
  shelf: Shelf,
  read: ReadRig,
): { readonly layouts: readonly WrittenLayout[]; readonly lost: number } {
  const text = shelf.getItem(KEY);
  if (text === null) return { layouts: [], lost: 0 };
  const found = parsed(text);
  const layouts = (found ?? []).filter((one) => isWritten(one) && read(one.goodDocument).ok) as WrittenLayout[];
  const lost = found === undefined ? 1 : found.length - layouts.length;
  if (lost > 0) setAside(shelf, KEY, text);
  return { layouts, lost };
}

function parsed(text: string): readonly unknown[] | undefined {
  const json = readJson(text, FORMAT);
  return json.parsed && json.issues.length === 0 && Array.isArray(json.document) ? json.document : undefined;
}

function isWritten(value: unknown): value is WrittenLayout {
  return isGroup(value) && isGroup(value.document) && isGroup(value.goodDocument);
}

/** A pause in the changes after which they are written [ms]. */
const SETTLE_MS = 400;

/** Keeps layouts with every change, a moment later. Trouble is told once, until they could be kept again. Returns what writes at once. */
export function startKeeping(
  layouts: Pick<Layouts, "onChange" | "written">,
  shelf: Shelf,
  { later, onTrouble }: { readonly later: Services["later"]; readonly onTrouble: (error: unknown) => void },
): () => void {
  let cancel: (() => void) | undefined;
  let trouble = false;
  function write(): void {
    cancel = undefined;
    try {
      keepLayouts(shelf, layouts.written());
      trouble = false;
    } catch (error) {
      if (!trouble) onTrouble(error);
      trouble = true;
    }
  }
  layouts.onChange(() => {
    cancel?.();
    cancel = later(SETTLE_MS, write);
  });
  return () => {
    if (!cancel) return;
    cancel();
    write();
  };
}
