import type { KeyAction } from "@secondline/workbench";

/** What types, chooses or opens something by its own keys. */
const KEEPS = "input, select, textarea, [role=menu], [role=listbox], [role=combobox], [role=tablist]";
const PRESSED = "button, a, summary, [role=button]";

/** What has keys of its own keeps them from the clock; `others`: what does so besides. */
export function keepsKey(target: Element, action: KeyAction, others?: string): boolean {
  if (target.closest(others === undefined ? KEEPS : `${KEEPS}, ${others}`)) return true;
  return action.do === "toggle" && target.closest(PRESSED) !== null;
}
