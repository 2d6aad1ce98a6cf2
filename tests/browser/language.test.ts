/**
 * The page in a language that is longer than English and marks every sentence: what was left behind in the code shows, and so does
 * every layout that a longer word breaks.
 */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pseudo } from "@secondline/words/pseudo";
import type { Page } from "playwright-core";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { type OwnApp, PHONE, SANDBOX, startApp, still, WIDE } from "./app.ts";
import { strayIn } from "./language.ts";

let app: OwnApp;
const outDir = mkdtempSync(join(tmpdir(), "secondline-pseudo-"));

beforeAll(async () => {
  vi.stubEnv("SECONDLINE_LANGUAGE", "Pseudo");
  // As it is built for users: under the runner of tests it would be a build for developers, slower and without kept results.
  vi.stubEnv("NODE_ENV", "production");
  try {
    await build({ root: SANDBOX, logLevel: "error", build: { outDir, sourcemap: false } });
  } finally {
    vi.unstubAllEnvs();
  }
  app = await startApp({ flat: true, outDir });
});
afterAll(async () => {
  await app.close();
  rmSync(outDir, { recursive: true });
});

/** What the user wrote is in the user's language: names and notes of the demo rig, of the example record and log. */
const OWN = ["sound-rig.json", "old-rig.json", "old-rig-wear.json"].flatMap((name) =>
  textsIn(JSON.parse(readFileSync(new URL(`../../demo-data/${name}`, import.meta.url), "utf8"))),
);

/** The cells of the example log. */
const CELLS = readFileSync(new URL("../../demo-data/break-log.csv", import.meta.url), "utf8")
  .split(/[,\n]/)
  .filter((cell) => /\p{L}{2}/u.test(cell));

function textsIn(value: unknown): readonly string[] {
  // Names and notes; single small words are values of the format, which the page must not show as they are.
  if (typeof value === "string") return /\p{L}{2}/u.test(value) && /[\p{Lu}\s-]/u.test(value) ? [value] : [];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** As the calendar shortens months, and examples of what is typed into a field. */
const MONTHS = Array.from({ length: 12 }, (_, month) =>
  new Intl.DateTimeFormat("de", { month: "short", timeZone: "UTC" }).format(Date.UTC(2026, month, 1)),
);
const KEPT = [...OWN, ...CELLS, ...MONTHS, "Long Gap: old", "Lesson gap", "every 15 m", "deg", "months"].sort(
  (a, b) => b.length - a.length,
);

const named = (page: Page, role: "button" | "menuitem", english: string) =>
  page.getByRole(role, { name: new RegExp(`^${pseudo(english).replace(/[?.+]/g, "\\$&")}`) }).filter({ visible: true });
const press = (page: Page, english: string) => named(page, "button", english).first().click();

/** To another view: by a tab, or on a phone by a menu. */
async function view(page: Page, english: string): Promise<void> {
  const tab = named(page, "button", english);
  if ((await tab.count()) > 0) return tab.first().click();
  await press(page, "Views");
  await named(page, "menuitem", english).click();
}

/** Opens whatever is folded, and what is folded in it. */
async function unfold(page: Page, within: string): Promise<void> {
  const openAll = (within: string) => {
    const folded = document.querySelectorAll<HTMLElement>(`${within} button[aria-expanded=false]:not([aria-haspopup])`);
    for (const one of folded) one.click();
    return folded.length;
  };
  for (let depth = 0; depth < 3 && (await page.evaluate(openAll, within)) > 0; depth++) await still(page);
}

const isGone = (page: Page, selector: string) => page.locator(selector).first().waitFor({ state: "detached" });

/** Views of the page, each reached from the one before. */
const VIEWS: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  "at first": (page) => page.locator("[data-whole]").first().waitFor({ state: "attached" }),
  "the verdict unfolded": (page) => unfold(page, "body"),
  // What is kept of earlier visits is kept by names that the language makes too: no view after this one needs the search.
  "the search stopped": (page) => press(page, "Stop the search"),
  "the menu of files": (page) => press(page, "File"),
  "the rig sheet": async (page) => {
    await page.keyboard.press("Escape");
    await press(page, "Rig");
    await unfold(page, `[aria-label="${pseudo("Rig sheet")}"], section[aria-label="${pseudo("Rig")}"]`);
  },
  layouts: async (page) => {
    await view(page, "Layouts");
    await press(page, "Copy this rig and change it");
  },
  "how far": (page) => view(page, "How far"),
  "the wear record": async (page) => {
    await view(page, "Wear");
    await press(page, "Add an entry");
    await unfold(page, "main");
  },
  "the break log": async (page) => {
    await press(page, "Break log");
    await unfold(page, "main");
  },
  "the teardown": (page) => press(page, "Teardown"),
  lessons: (page) => view(page, "Lessons"),
  "a lesson": async (page) => {
    await page.locator("main ol button").first().click();
    await isGone(page, "[role=progressbar]");
  },
  "a new rig": async (page) => {
    await press(page, "All lessons");
    await press(page, "File");
    await named(page, "menuitem", "New rig…").click();
  },
  "a webbing of one's own": async (page) => {
    await press(page, "Enter your own webbing or rope…");
    await page.getByRole("dialog").waitFor();
  },
  "the site card": async (page) => {
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    await press(page, "File");
    await named(page, "menuitem", "Site card…").click();
  },
};

describe.each([WIDE, PHONE])("at $width × $height", (viewport) => {
  it("says nothing that is not in the language, and has room for what is longer", async () => {
    const { page, problems } = await app.visit({ viewport, first: true, untouched: false, searches: false });
    const stray: string[] = [];
    for (const [name, show] of Object.entries(VIEWS)) {
      await show(page);
      await isGone(page, "main[aria-busy=true]");
      await still(page);
      stray.push(...(await strayIn(page, KEPT)).map((one) => `${name}: ${one}`));
    }
    expect(stray).toEqual([]);
    expect(problems).toEqual([]);
  });
});
