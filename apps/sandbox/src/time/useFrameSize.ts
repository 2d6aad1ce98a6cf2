import { startTransition, useLayoutEffect, useState } from "react";

const UNKNOWN_SIZE = { width: 0, height: 0 };

/** Size of an element, followed as it changes [px]; zero until it is laid out. */
export function useFrameSize<T extends HTMLElement>() {
  // State, not a ref: the element may be replaced by another one.
  const [element, ref] = useState<T | null>(null);
  const [size, setSize] = useState(UNKNOWN_SIZE);
  useLayoutEffect(() => {
    if (!element) return;
    const read = () => {
      const [width, height] = [element.clientWidth, element.clientHeight];
      setSize((known) => (known.width === width && known.height === height ? known : { width, height }));
    };
    // What is drawn at this size comes in slices, and holds up nothing that is there already.
    startTransition(read);
    const observer = new ResizeObserver(read);
    observer.observe(element);
    return () => observer.disconnect();
  }, [element]);
  return { ref, size };
}
