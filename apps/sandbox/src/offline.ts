/** Keeps the app on the device for use without a network, and asks before a newer version takes over. */
import { registerSW } from "virtual:pwa-register";
import { sayFiles } from "@secondline/words/page/files";
import type { Actions } from "@secondline/workbench";

export function keepOffline({ tell }: Actions): void {
  const update = registerSW({
    onNeedRefresh: () =>
      tell({
        tone: "word",
        text: sayFiles("offline.newerVersion"),
        action: { label: sayFiles("offline.changeNow"), run: () => void update(true) },
      }),
    // Without it the app works all the same, with a network.
    onRegisterError: () => undefined,
  });
}
