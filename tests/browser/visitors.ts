/**
 * Visitors of the page: each comes to a page without any work of an earlier one. A browser's context stays for the next
 * visitor with the same screen and fingers, and with it the results of runs and the compiled scripts.
 */
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { onTestFinished } from "vitest";
import { Brought } from "./keptResults.ts";

/** Patience with a slow machine [ms]: long past anything that is waited for, well within a test's own time. */
const PATIENCE = 60_000;

export const WIDE = { width: 1440, height: 900 };
export const PHONE = { width: 390, height: 844 };

interface Place {
  readonly context: BrowserContext;
  readonly brought: Brought;
}
interface Coming {
  /** Has been here before: finds the results of runs, its own and others'. */
  readonly again: boolean;
  readonly installs: boolean;
}

export class Visitors {
  readonly #browser: Browser;
  readonly #url: string;
  readonly #outDir: string;
  /** Contexts that nobody uses just now, by what they are. */
  readonly #free = new Map<string, Place[]>();

  constructor(browser: Browser, url: string, outDir: string) {
    this.#browser = browser;
    this.#url = url;
    this.#outDir = outDir;
  }

  /** An empty page, which is closed when the test ends. */
  async come(
    { viewport = WIDE, colorScheme = "light", ...options }: BrowserContextOptions,
    { again, installs }: Coming,
  ): Promise<Page> {
    const serviceWorkers = installs ? "allow" : "block";
    const wanted = { viewport: WIDE, reducedMotion: "reduce", serviceWorkers, ...options } as const;
    // An installed page would be there before the next visitor comes.
    const stays = again && !installs;
    const free = this.#freeFor(JSON.stringify(wanted));
    const place = (stays ? free.pop() : undefined) ?? (await this.#open(wanted));
    const page = await place.context.newPage();
    onTestFinished(async () => {
      // A page that is gone or offline has nothing to give.
      await place.brought.take(page).catch(() => undefined);
      await (stays ? page.close() : place.context.close());
      if (stays) free.push(place);
    });
    if (again) await place.brought.bring(page);
    await page.setViewportSize(viewport!);
    await page.emulateMedia({ colorScheme });
    return page;
  }

  async leave(): Promise<void> {
    await Promise.all([...this.#free.values()].flat().map(({ context }) => context.close()));
    this.#free.clear();
  }

  #freeFor(key: string): Place[] {
    const free = this.#free.get(key) ?? [];
    this.#free.set(key, free);
    return free;
  }

  async #open(options: BrowserContextOptions): Promise<Place> {
    const context = await this.#browser.newContext(options);
    context.setDefaultTimeout(PATIENCE);
    return { context, brought: new Brought(this.#url, this.#outDir) };
  }
}
