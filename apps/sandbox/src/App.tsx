import { CSPProvider } from "@base-ui/react/csp-provider";
import { useState } from "react";
import type { Booted } from "./boot.ts";
import { pageClock } from "./clock/pageClock.ts";
import { Page } from "./page/Page.tsx";
import { SandboxContext } from "./state/useSandbox.ts";

export function App({ booted }: { booted: Booted }) {
  const [clock] = useState(() => pageClock({ duration: 0, speed: 1 / 4 }));
  return (
    // Styles in line are forbidden; those that lists would bring are in shared.css.
    <CSPProvider disableStyleElements>
      <SandboxContext.Provider value={booted.sandbox}>
        <Page booted={booted} clock={clock} />
      </SandboxContext.Provider>
    </CSPProvider>
  );
}
