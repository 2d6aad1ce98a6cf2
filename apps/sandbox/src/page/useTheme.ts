import { useEffect } from "react";
import type { Theme } from "../design/palette.ts";
import { useMedia } from "../design/useMedia.ts";
import { useSandbox } from "../state/useSandbox.ts";

/** The theme in force: the chosen one, or the system's. Keeps the page's attribute in step. */
export function useTheme(): Theme {
  const chosen = useSandbox((state) => state.session.theme);
  const dark = useMedia("(prefers-color-scheme: dark)");
  const theme = chosen ?? (dark ? "dark" : "light");
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  return theme;
}
