import { useEffect, useState } from "react";

/** Takes files that are dropped anywhere on the page; true while some are held over it. `first`: before others that do so too. */
export function useFileDrop(open: (file: File) => Promise<void>, first = false): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const on = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes("Files")) return;
      if (first) event.stopImmediatePropagation();
      if (event.type === "dragleave") return event.relatedTarget === null ? setOver(false) : undefined;
      event.preventDefault();
      if (event.type === "dragover") return setOver(true);
      setOver(false);
      const file = event.dataTransfer.files[0];
      if (file) void open(file);
    };
    const kinds = ["dragover", "dragleave", "drop"] as const;
    for (const kind of kinds) addEventListener(kind, on, first);
    return () => {
      for (const kind of kinds) removeEventListener(kind, on, first);
    };
  }, [open, first]);
  return over;
}
