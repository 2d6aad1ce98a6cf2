import { useLayoutEffect, useRef, useState } from "react";

/** Size of an element, followed as it changes [px]; zero until it is laid out. */
export function useFrameSize<T extends HTMLElement>() {
  const ref = useRef<T>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const read = () => {
      const [width, height] = [element.clientWidth, element.clientHeight];
      setSize((known) => (known.width === width && known.height === height ? known : { width, height }));
    };
    read();
    const observer = new ResizeObserver(read);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, size };
}
