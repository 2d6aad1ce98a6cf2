import { useEffect, useMemo } from "react";

/** Something that holds memory on the graphics card, made anew when `deps` change and given back afterwards. */
export function useOwned<T extends { dispose: () => void }>(make: () => T, deps: readonly unknown[]): T {
  // biome-ignore lint/correctness/useExhaustiveDependencies: the caller names what the thing is made of
  const owned = useMemo(make, deps);
  useEffect(() => () => owned.dispose(), [owned]);
  return owned;
}
