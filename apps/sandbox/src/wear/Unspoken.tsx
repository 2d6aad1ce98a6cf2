import type { ReactNode } from "react";

/** A part of a drawing that screen readers pass over: what it shows is said elsewhere, in words. */
export function Unspoken({ children, transform }: { children: ReactNode; transform?: string }) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of a drawing takes no focus
    <g aria-hidden="true" transform={transform}>
      {children}
    </g>
  );
}
