import { useSyncExternalStore } from "react";
import { PALETTES, type Palette, type Theme } from "../design/palette.ts";

/** The colours in force, for what is drawn on canvas; paper is always light. */
export function usePalette(): Palette {
  return PALETTES[useSyncExternalStore(subscribe, themeInForce, () => "light" as const)];
}

function themeInForce(): Theme {
  if (matchMedia("print").matches) return "light";
  const chosen = document.documentElement.dataset.theme;
  if (chosen === "light" || chosen === "dark") return chosen;
  return matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
}

function subscribe(listener: () => void): () => void {
  const queries = [matchMedia("(prefers-color-scheme: dark)"), matchMedia("print")];
  for (const query of queries) query.addEventListener("change", listener);
  const observer = new MutationObserver(listener);
  observer.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
  return () => {
    for (const query of queries) query.removeEventListener("change", listener);
    observer.disconnect();
  };
}
