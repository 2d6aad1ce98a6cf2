/** The built sandbox in a headless browser, as a user meets it. */
import { fileURLToPath } from "node:url";
import AxeBuilder from "@axe-core/playwright";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { type PreviewServer, preview } from "vite";
import { expect } from "vitest";
// @ts-expect-error a plain script, shared with the launcher
import { CHROME_ARGS, ensureChrome } from "../../scripts/chrome.mjs";

export const WIDE = { width: 1440, height: 900 };
export const PHONE = { width: 390, height: 844 };

/**
 * Warnings that are not ours to mend: the scene's library still makes a clock that three has deprecated, and the
 * software rasteriser of a headless browser comments on its own speed when a picture is read back.
 */
const KNOWN = [/THREE\.Clock: This module has been deprecated/, /GPU stall due to ReadPixels/];

export interface App {
  readonly url: string;
  readonly browser: Browser;
  /** A page of its own, with nothing kept from earlier. `problems` gathers what the console warns of. */
  visit(options?: Visit): Promise<Visited>;
  close(): Promise<void>;
}
export interface Visit extends BrowserContextOptions {
  readonly hash?: string;
  /** Runs in the page before anything of the app. */
  readonly before?: () => void;
}
export interface Visited {
  readonly page: Page;
  readonly problems: string[];
}

/**
 * `flat`: a browser without WebGL. The page then draws the elevation, which costs a software rasteriser little: for
 * tests that are not about the scene in space.
 */
export async function startApp({ flat }: { readonly flat: boolean }): Promise<App> {
  const server: PreviewServer = await preview({
    root: fileURLToPath(new URL("../../apps/sandbox", import.meta.url)),
    logLevel: "error",
    preview: { port: 0, strictPort: false },
  });
  const url = server.resolvedUrls!.local[0]!;
  const browser = await chromium.launch({
    executablePath: ensureChrome(),
    args: flat ? [...CHROME_ARGS, "--disable-3d-apis"] : CHROME_ARGS,
  });
  return {
    url,
    browser,
    async visit({ hash = "", before, ...options } = {}) {
      const context = await browser.newContext({ viewport: WIDE, reducedMotion: "reduce", ...options });
      const page = await context.newPage();
      const problems = watch(page);
      if (before) await page.addInitScript(before);
      await page.goto(url + hash);
      return { page, problems };
    },
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

function watch(page: Page): string[] {
  const problems: string[] = [];
  page.on("pageerror", (error) => problems.push(`error: ${error.message}`));
  page.on("console", (message) => {
    const text = message.text();
    if (!["warning", "error"].includes(message.type()) || KNOWN.some((known) => known.test(text))) return;
    problems.push(`${message.type()}: ${text}`);
  });
  return problems;
}

/** What is drawn on: by three in space, or flat from the side. */
export const SPACE = "[data-scene] canvas[data-engine]";
export const ELEVATION = "[data-scene] canvas:not([data-engine])";

/** Waits until the fall and the verdict in sight are those of the rig and what-if in hand. */
export async function computed(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelectorAll("[role=progressbar]").length === 0 &&
      document.querySelector("[aria-label='Parts from harness to rock']") !== null,
    undefined,
    { timeout: 60_000 },
  );
}

/** A change of rig or what-if has been taken up and computed. */
export async function recomputed(page: Page, change: () => Promise<unknown>): Promise<void> {
  // A short run is over before anyone who polls has seen its progress: the page itself notes that one was shown or told.
  await page.evaluate(() => {
    const told = () => document.querySelector("[role=status]")?.textContent;
    const before = told();
    document.body.dataset["ran"] = "";
    new MutationObserver((_, observer) => {
      if (!document.querySelector("[role=progressbar]") && told() === before) return;
      document.body.dataset["ran"] = "yes";
      observer.disconnect();
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  });
  await change();
  await page.waitForFunction(() => document.body.dataset["ran"] === "yes", undefined, { timeout: 20_000 });
  await computed(page);
}

/** What the page says of the fall in sight. */
export async function answer(page: Page): Promise<string> {
  return ((await page.getByTestId("answer").textContent()) ?? "").trim();
}

export async function openRig(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Rig", exact: true }).click();
  await page.getByRole("textbox", { name: "Span" }).waitFor();
}

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What axe finds wrong with the page as it stands. */
export async function violations(page: Page): Promise<string[]> {
  // Menus and lists of options lie at the end of the page, outside of its landmarks, as such popups do.
  const popups = await page.locator("[role=menu], [role=listbox]").count();
  const axe = new AxeBuilder({ page }).withTags(RULES);
  const found = await (popups > 0 ? axe.disableRules(["region"]) : axe).analyze();
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(" | ")}`);
}

export async function expectAccessible(page: Page): Promise<void> {
  expect(await violations(page)).toEqual([]);
}
