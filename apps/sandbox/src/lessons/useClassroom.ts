import { useCallback, useEffect, useState } from "react";

/** A class in front of the page: full screen where the browser has one, large type everywhere. Escape leaves both. */
export function useClassroom() {
  const [inClass, setInClass] = useState(false);
  const begin = useCallback(() => {
    setInClass(true);
    // A browser without it, or that refuses, shows the same in its window.
    void document.documentElement.requestFullscreen?.().catch(() => undefined);
  }, []);
  const end = useCallback(() => {
    setInClass(false);
    if (document.fullscreenElement) void document.exitFullscreen().catch(() => undefined);
  }, []);
  useEffect(() => {
    if (!inClass) return;
    const root = document.documentElement;
    root.dataset.class = "";
    let was = document.fullscreenElement !== null;
    const onChange = () => {
      if (was && !document.fullscreenElement) setInClass(false);
      was = document.fullscreenElement !== null;
    };
    document.addEventListener("fullscreenchange", onChange);
    return () => {
      delete root.dataset.class;
      document.removeEventListener("fullscreenchange", onChange);
    };
  }, [inClass]);
  return { inClass, begin, end };
}
