import { CSPProvider } from "@base-ui/react/csp-provider";
import { useState } from "react";
import type { Booted } from "./boot.ts";
import { createPlaybackClock } from "./clock/playbackClock.ts";
import { Page } from "./page/Page.tsx";
import { SandboxContext } from "./state/useSandbox.ts";

export function App({ booted }: { booted: Booted }) {
  const [clock] = useState(() => createPlaybackClock({ duration: 0, speed: 1 / 4 }));
  return (
    // Styles in line are forbidden; those that lists would bring are in shared.css.
    <CSPProvider disableStyleElements>
      <SandboxContext.Provider value={booted.sandbox}>
        <Page booted={booted} clock={clock} />
      </SandboxContext.Provider>
    </CSPProvider>
  );
}
