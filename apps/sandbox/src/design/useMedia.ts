import { useCallback, useSyncExternalStore } from "react";

/** Whether a media query holds now. */
export function useMedia(query: string): boolean {
  const subscribe = useCallback(
    (changed: () => void) => {
      const list = matchMedia(query);
      list.addEventListener("change", changed);
      return () => list.removeEventListener("change", changed);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => matchMedia(query).matches);
}

const WIDE = "(min-width: 1000px) and (min-height: 500px)";
let wide = false;

/** Room for everything side by side. Printing changes nothing: paper is no other screen. */
export function useWide(): boolean {
  const seen = useMedia(WIDE);
  const printing = useMedia("print");
  if (!printing) wide = seen;
  return wide;
}
export const useReducedMotion = () => useMedia("(prefers-reduced-motion: reduce)");
