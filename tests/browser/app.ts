/** The built sandbox in a headless browser, as a user meets it. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import AxeBuilder from "@axe-core/playwright";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { preview } from "vite";
import { expect } from "vitest";
// @ts-expect-error a plain script, shared with the launcher
import { CHROME_ARGS, ensureChrome, FLAT_ARGS } from "../../scripts/chrome.mjs";
import { Visitors } from "./visitors.ts";

export { PHONE, WIDE } from "./visitors.ts";

/**
 * Warnings that are not ours to mend: the scene's library still makes a clock that three has deprecated, and the
 * software rasteriser of a headless browser comments on its own speed when a picture is read back.
 */
export const KNOWN = [
  /THREE\.Clock: This module has been deprecated/,
  /GPU stall due to ReadPixels/,
  // What `installs: false` says of itself.
  /Service Worker registration blocked by Playwright/,
];

/** Where the page is built from. */
export const SANDBOX = fileURLToPath(new URL("../../apps/sandbox", import.meta.url));

export interface App {
  readonly url: string;
  readonly browser: Browser;
  /**
   * A page of its own, without any work of an earlier one, but with the results of runs that earlier pages have made: most
   * tests are of something else than a search, which would fill both cores beside each of them. The page is closed when its
   * test ends. `problems` gathers what the console warns of.
   */
  visit(options?: Visit): Promise<Visited>;
}
/** One that its file of tests has started for itself, and ends. */
export interface OwnApp extends App {
  close(): Promise<void>;
}
export interface Visit extends BrowserContextOptions {
  readonly hash?: string;
  /** Without any results from before: for tests of what is seen while something is computed, and of a first visit. */
  readonly first?: boolean;
  /** Nobody touches the page, so that it goes on to the what-if that the verdict turns on; default: as `first`. */
  readonly untouched?: boolean;
  /**
   * Makes runs on all cores; default: as `first`. Else one run at a time, as in a page that nobody looks at: the search that every
   * change sets off leaves a core to what the test does.
   */
  readonly searches?: boolean;
  /** The whole search after a quick look is never answered: for tests that change what it would have to make anew, and wait for none of it. */
  readonly quickLookAlone?: boolean;
  /** The page installs itself for use without a network, which fetches everything that it has; only where a test asks for it. */
  readonly installs?: boolean;
  /** Runs in the page before anything of the app. */
  readonly before?: () => void;
}
export interface Visited {
  readonly page: Page;
  readonly problems: string[];
}

const shared = new Map<boolean, Promise<App>>();

/**
 * The app as `npm run build` built it, one for all files of tests: it ends with the process that runs them. `flat`: a browser without
 * WebGL, which puts its pages together without a graphics library too: where that library is a software one, it costs more than all
 * the rest. For tests that are not about the scene in space.
 */
export function sharedApp({ flat }: { flat: boolean }): Promise<App> {
  const app = shared.get(flat) ?? startApp({ flat });
  shared.set(flat, app);
  return app;
}

/** `outDir`: where it was built to. */
export async function startApp({ flat, outDir = "dist" }: { flat: boolean; outDir?: string }): Promise<OwnApp> {
  const server = await preview({
    root: SANDBOX,
    logLevel: "error",
    build: { outDir },
    preview: { port: 0, strictPort: false },
  });
  const url = server.resolvedUrls!.local[0]!;
  const browser = await browserOf(flat);
  const visitors = new Visitors(browser, url, outDir);
  return {
    url,
    browser,
    async visit({
      hash = "",
      first = false,
      untouched = first,
      searches = first,
      quickLookAlone = false,
      installs = false,
      before,
      ...options
    } = {}) {
      const page = await visitors.come(options, { again: !first, installs });
      if (!untouched) await page.addInitScript(keepTouching);
      if (!searches) await page.addInitScript(seemHidden);
      if (quickLookAlone) await page.addInitScript(loseWholeSearches);
      const problems = watch(page);
      if (before) await page.addInitScript(before);
      await page.goto(url + hash);
      return { page, problems };
    },
    async close() {
      await visitors.leave();
      await server.close();
    },
  };
}

const browsers = new Map<boolean, Promise<Browser>>();

function browserOf(flat: boolean): Promise<Browser> {
  const args: string[] = flat ? FLAT_ARGS : CHROME_ARGS;
  const browser = browsers.get(flat) ?? chromium.launch({ executablePath: ensureChrome(), args });
  browsers.set(flat, browser);
  return browser;
}

/** A hand is on the page from the start: whenever it begins to look for one, it finds it. */
function keepTouching(): void {
  setInterval(() => dispatchEvent(new Event("wheel")), 100);
}

/** What the page asks before it decides how many runs it makes at a time (`apps/sandbox/src/worker/runner.ts`). */
function seemHidden(): void {
  Object.defineProperty(document, "hidden", { get: () => true });
}

/** Whole searches are asked for and never heard of again; the requests are those of `apps/sandbox/src/worker`, by comlink. */
function loseWholeSearches(): void {
  interface Call {
    readonly path?: readonly string[];
    readonly argumentList?: readonly { readonly value?: { readonly size?: string } }[];
  }
  class Worker extends globalThis.Worker {
    override postMessage(call: Call, ...rest: never[]): void {
      if (call.path?.[0] === "study" && call.argumentList?.[0]?.value?.size === "full") return;
      super.postMessage(call, ...rest);
    }
  }
  globalThis.Worker = Worker;
}

function watch(page: Page): string[] {
  const problems: string[] = [];
  page.on("pageerror", (error) => problems.push(`error: ${error.message}`));
  page.on("console", (message) => {
    const text = message.text();
    if (!["warning", "error"].includes(message.type()) || KNOWN.some((known) => known.test(text))) return;
    problems.push(`${message.type()}: ${text} ${message.location().url}`.trim());
  });
  return problems;
}

/** What is drawn on: by three in space, or flat from the side. */
export const SPACE = "[data-scene] canvas[data-engine]";
export const ELEVATION = "[data-scene] canvas:not([data-engine])";

/** Progress of what is waited for; the search for the whole verdict goes on meanwhile. */
const BUSY = "[role=progressbar]:not([data-search] *)";

/** Waits until the fall in sight is that of the open rig and its what-if, and something is found of their verdict. */
export async function computed(page: Page): Promise<void> {
  await page.waitForFunction(
    (busy) =>
      document.querySelector(busy) === null &&
      document.querySelector("[aria-label='Parts from harness to rock']") !== null,
    BUSY,
  );
}

/** Waits until everything has been looked at: the verdict is whole. */
export async function whole(page: Page): Promise<void> {
  await page.locator("[data-whole=true]").waitFor({ state: "attached", timeout: 170_000 });
}

/** A change of rig or what-if has been taken up, and its fall computed; of a verdict that follows, nothing need be found yet. */
export async function recomputed(page: Page, change: () => Promise<unknown>): Promise<void> {
  // A short run is over before anyone who polls has seen its progress: the page itself notes that one was shown or told.
  await page.evaluate((busy) => {
    const told = () => document.querySelector("[role=status]")?.textContent;
    const before = told();
    document.body.dataset["ran"] = "";
    new MutationObserver((_, observer) => {
      if (!document.querySelector(busy) && told() === before) return;
      document.body.dataset["ran"] = "yes";
      observer.disconnect();
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  }, BUSY);
  await change();
  await page.waitForFunction(() => document.body.dataset["ran"] === "yes");
  await page.waitForFunction((busy) => document.querySelector(busy) === null, BUSY);
}

/**
 * Clicks on a button in the moment it appears, from within the page: for buttons that are there only while something is
 * computed, and may be gone before a click from outside arrives. Arm it before what brings the button up, and await what
 * it returns afterwards. `within`: selector of what the button lies in; `begun`: waits for progress above zero.
 */
export async function armClick(
  page: Page,
  name: string,
  { within = "body", begun = false }: { readonly within?: string; readonly begun?: boolean } = {},
): Promise<() => Promise<void>> {
  await page.evaluate(
    ([name, within, begun]) => {
      document.body.dataset["clicked"] = "";
      new MutationObserver((_, observer) => {
        const place = document.querySelector(within);
        const button = [...(place?.querySelectorAll("button") ?? [])].find(
          (one) => (one.getAttribute("aria-label") ?? one.textContent) === name,
        );
        const done = Number(place?.querySelector("[role=progressbar]")?.ariaValueNow ?? 0);
        if (!button || (begun && !(done > 0))) return;
        observer.disconnect();
        document.body.dataset["clicked"] = "yes";
        button.click();
      }).observe(document.body, { childList: true, subtree: true, attributes: true });
    },
    [name, within, begun] as const,
  );
  return async () => {
    await page.waitForFunction(() => document.body.dataset["clicked"] === "yes");
  };
}

/** Chooses from a list of options; done when the list is gone and the choice stands in its place. */
export async function choose(page: Page, list: string, option: string | RegExp): Promise<void> {
  const box = page.getByRole("combobox", { name: list });
  await box.click();
  const entry = page.getByRole("option", { name: option });
  // The chosen one has a mark before its words.
  const words = (await entry.textContent())!.replace("●", "").trim();
  await entry.click();
  await page.getByRole("listbox").waitFor({ state: "detached" });
  await expect.poll(() => box.textContent()).toContain(words);
}

/** Nothing moves any more: what slides or fades has come to its end, and that has been painted. */
export async function still(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    // Twice: what an effect of the last rendering sets off is there after the first frame.
    for (let round = 0; round < 2; round++) {
      await frame();
      await frame();
      const ending = document
        .getAnimations()
        .filter((animation) => Number.isFinite(animation.effect?.getComputedTiming().endTime));
      // One that is cancelled has ended as well.
      await Promise.allSettled(ending.map((animation) => animation.finished));
    }
  });
}

/** Waits until the work kept on the device holds `text` (of its JSON): only then may a test reload the page. */
export async function kept(page: Page, text: string): Promise<void> {
  const work = () =>
    page.evaluate(
      () =>
        new Promise<string>((resolve, reject) => {
          const opening = indexedDB.open("secondline");
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            const database = opening.result;
            const reading = database.transaction("work").objectStore("work").get("current");
            reading.onsuccess = () => resolve(JSON.stringify(reading.result ?? null));
            reading.onerror = () => reject(reading.error);
            reading.transaction!.oncomplete = () => database.close();
          };
        }),
    );
  await expect.poll(work).toContain(text);
}

/** The same for what is kept under `key` in the browser's small storage. */
export async function shelved(page: Page, key: string, text: string): Promise<void> {
  await expect.poll(() => page.evaluate((key) => localStorage.getItem(key) ?? "", key)).toContain(text);
}

/** What the page says of the fall in sight. */
export async function answer(page: Page): Promise<string> {
  return ((await page.getByTestId("answer").textContent()) ?? "").trim();
}

export async function openRig(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Rig", exact: true }).click();
  await rigSheetOpen(page);
}

/** The rig sheet stands open and can be typed into. */
export async function rigSheetOpen(page: Page): Promise<void> {
  await page.locator("[aria-label='Rig sheet']:not([inert])").waitFor();
  await page.getByRole("textbox", { name: "Span" }).waitFor();
  await still(page);
}

interface RigFile {
  readonly name: string;
  readonly [field: string]: unknown;
}

/** A rig of the demonstration without its backup: a search of fewer runs, where a test needs a whole one and not the demo rig's. */
export function mainLineAlone(file: string): RigFile {
  const { backup: _, ...rig } = JSON.parse(readFileSync(new URL(`../../demo-data/${file}`, import.meta.url), "utf8"));
  return { ...rig, name: `${rig.name}, main line alone` };
}

/** A short one, whose runs are short too. */
export function shortLine(): RigFile {
  const rig = mainLineAlone("sound-rig.json");
  const { wear: _, ...section } = (rig["main"] as { sections: [Record<string, unknown>] }).sections[0];
  const ground = [
    ["0 m", "0 m"],
    ["3 m", "-60 m"],
    ["17 m", "-60 m"],
    ["20 m", "0 m"],
  ];
  return { ...rig, span: "20 m", rise: "0 m", ground, main: { ...(rig["main"] as object), sections: [section] } };
}

/** Opens a rig from a file. */
export async function openRigFile(page: Page, rig: { readonly name: string }): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "File" }).click();
  await page.getByRole("menuitem", { name: "Open a rig file…" }).click();
  const buffer = Buffer.from(JSON.stringify(rig));
  await (await chooser).setFiles({ name: "rig.json", mimeType: "application/json", buffer });
  await page.getByRole("heading", { level: 1, name: rig.name, exact: true }).waitFor();
}

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What axe finds wrong with the page as it stands. */
export async function violations(page: Page): Promise<string[]> {
  // Menus and lists of options lie at the end of the page, outside of its landmarks, as such popups do.
  const popups = await page.locator("[role=menu], [role=listbox]").count();
  // In the page itself, which has no frames: handing its findings to a second page to be put together takes five times as long.
  const axe = new AxeBuilder({ page })
    .options({ resultTypes: ["violations"] })
    .setLegacyMode(true)
    .withTags(RULES);
  const found = await (popups > 0 ? axe.disableRules(["region"]) : axe).analyze();
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(" | ")}`);
}

/** The same in either theme; the page is left in the dark one. */
export async function violationsInThemes(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    await still(page);
    found.push(...(await violations(page)).map((violation) => `${colorScheme}: ${violation}`));
  }
  return found;
}

export async function expectAccessible(page: Page): Promise<void> {
  expect(await violations(page)).toEqual([]);
}
