/** The page as it is built, with one script before all others that notes what goes wrong in it. */

import { build, type Plugin } from "vite";
import { vi } from "vitest";
import { KNOWN, SANDBOX } from "../browser/app.ts";
import type { Driven } from "./driven.ts";

/** Builds the page into `outDir`, as it is built for users and not for tests. */
export async function buildWatched(outDir: string): Promise<void> {
  vi.stubEnv("NODE_ENV", "production");
  try {
    await build({ root: SANDBOX, logLevel: "error", plugins: [watching], build: { outDir, sourcemap: false } });
  } finally {
    vi.unstubAllEnvs();
  }
}

const watching: Plugin = {
  name: "watching",
  transformIndexHtml: () => [{ tag: "script", attrs: { src: "./watch.js" }, injectTo: "head-prepend" }],
  generateBundle() {
    this.emitFile({ type: "asset", fileName: "watch.js", source: `(${watch.toString()})();` });
  },
};

/** Runs in the page, before anything of it. */
function watch(): void {
  const problems: string[] = [];
  (globalThis as { problems?: string[] }).problems = problems;
  addEventListener(
    "error",
    (event) => {
      const { target } = event;
      problems.push(
        target instanceof Element ? `not loaded: ${target.outerHTML}` : `error: ${(event as ErrorEvent).message}`,
      );
    },
    true,
  );
  addEventListener("unhandledrejection", ({ reason }) => problems.push(`rejected: ${String(reason)}`));
  document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) =>
    problems.push(`refused by the policy: ${violatedDirective} ${blockedURI}`),
  );
  for (const kind of ["error", "warn"] as const) {
    const write = console[kind].bind(console);
    console[kind] = (...parts: unknown[]) => {
      problems.push(`${kind}: ${parts.map(String).join(" ")}`);
      write(...parts);
    };
  }
}

/** What went wrong in the page until now. */
export async function problemsOf(page: Driven): Promise<readonly string[]> {
  const noted = await page.ask(() => (globalThis as { problems?: string[] }).problems, "");
  if (!noted) throw new Error("The page was opened without the script that watches it");
  return [...noted, ...(await page.complaints())].filter((one) => !KNOWN.some((known) => known.test(one)));
}
