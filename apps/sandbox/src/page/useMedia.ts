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

export const useWide = () => useMedia("(min-width: 1000px) and (min-height: 500px)");
export const useReducedMotion = () => useMedia("(prefers-reduced-motion: reduce)");
