import type { KeyboardEvent } from "react";

/** Escape leaves a form, but not while a list of options or a menu of its own is open: that has Escape for itself. */
export function onEscape(leave: () => void): (event: KeyboardEvent) => void {
  return (event) => {
    // Popups lie elsewhere in the page, though what happens in them is told here as well.
    const inside = event.currentTarget.contains(event.target as Node);
    if (event.key !== "Escape" || event.defaultPrevented || !inside) return;
    event.preventDefault();
    leave();
  };
}
