/** Keeps the app on the device for use without a network, and asks before a newer version takes over. */
import { registerSW } from "virtual:pwa-register";
import type { Actions } from "@secondline/workbench";

export function keepOffline({ tell }: Actions): void {
  const update = registerSW({
    onNeedRefresh: () =>
      tell({
        tone: "word",
        text: "A newer version of Secondline is ready. Your work is kept when you change to it.",
        action: { label: "Change to it now", run: () => void update(true) },
      }),
    // Without it the app works all the same, with a network.
    onRegisterError: () => undefined,
  });
}
