/** Every view for everybody: names, contrast, targets, narrow screens. */
import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { type App, choose, computed, openRig, PHONE, sharedApp, still, violationsInThemes } from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

const closePopup = (page: Page) => page.keyboard.press("Escape");
/** Views of a wide screen, each reached from the one before. */
const WIDE_VIEWS: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  "at first": async () => undefined,
  "the file menu": (page) => page.getByRole("button", { name: "File", exact: true }).click(),
  "the place of the walker": async (page) => {
    await closePopup(page);
    await page.getByRole("button", { name: /^The walker's place/ }).click();
  },
  "the choice of views": async (page) => {
    await closePopup(page);
    await page.getByRole("combobox", { name: "View" }).click();
  },
  "reasons and what-ifs": async (page) => {
    await closePopup(page);
    await page.getByRole("button", { name: /^Leash,/ }).click();
    await page.getByRole("button", { name: /^The \d+ what-ifs/ }).click();
    await page.getByRole("button", { name: "What the verdict rests on" }).click();
  },
  "all cautions": (page) => page.getByRole("button", { name: /more cautions/ }).click(),
  "every group of the rig sheet": async (page) => {
    await openRig(page);
    const groups = page.getByRole("complementary", { name: "Rig sheet" }).getByRole("button", { expanded: false });
    // Groups hold groups of their own: open until none is left.
    while ((await groups.count()) > 0) {
      await groups.evaluateAll((closed) => {
        for (const one of closed) (one as HTMLElement).click();
      });
      await still(page);
    }
  },
  "a wrong entry": (page) => page.getByRole("textbox", { name: "Length of the leash" }).fill("long"),
  "earlier work": async (page) => {
    await page.getByRole("button", { name: "File", exact: true }).click();
    await page.getByRole("menuitem", { name: /^Earlier work/ }).click();
  },
};

it("axe finds nothing in any view of a wide screen, light or dark", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  const found: string[] = [];
  for (const [name, show] of Object.entries(WIDE_VIEWS)) {
    await show(page);
    found.push(...(await violationsInThemes(page)).map((violation) => `${name}, ${violation}`));
  }
  expect(found).toEqual([]);
  expect(problems).toEqual([]);
}, 300_000);

it("axe finds nothing on any page of a phone, light or dark, and the finger has 44 px", async () => {
  const { page, problems } = await app.visit({ viewport: PHONE, hasTouch: true, isMobile: true });
  await computed(page);
  const found: string[] = [];
  for (const place of PLACES) {
    await goTo(page, place);
    found.push(...(await smallTargets(page)).map((target) => `${place}: ${target}`));
    found.push(...(await violationsInThemes(page)).map((violation) => `${place}, ${violation}`));
  }
  expect(found).toEqual([]);
  expect(problems).toEqual([]);
}, 300_000);

const PLACES = ["Verdict", "Time", "Rig"] as const;
/** Goes to a page of the phone's sheet and waits until it has come to rest there. */
async function goTo(page: Page, place: string): Promise<void> {
  await page.getByRole("navigation", { name: "Pages" }).getByRole("button", { name: place }).tap();
  await page.waitForFunction((place) => {
    const shown = document.querySelector(`section section[aria-label='${place}']:not([inert])`);
    const box = shown?.getBoundingClientRect();
    return box !== undefined && Math.abs(box.left) < 1;
  }, place);
  await still(page);
}

/** Things to touch that are smaller than a fingertip; links within a sentence are exempt (WCAG 2.2, 2.5.8). */
function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const things = [...document.querySelectorAll<HTMLElement>("button, [role=combobox], input:not([type=range])")];
    return (
      things
        .filter((thing) => thing.checkVisibility({ visibilityProperty: true }))
        .filter((thing) => !thing.closest("[inert], p, [aria-hidden=true]"))
        // Its drawing is low, its target reaches over the edge of the sheet.
        .filter((thing) => !thing.matches("[aria-label^='Height of the sheet']"))
        .map((thing) => ({ thing, box: thing.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
        .map(({ thing, box }) => `${thing.getAttribute("aria-label") ?? thing.textContent} ${box.width}×${box.height}`)
    );
  });
}

it("moves the sheet of a phone through its three heights, by touch and by key", async () => {
  const { page, problems } = await app.visit({ viewport: PHONE, hasTouch: true, isMobile: true });
  await computed(page);
  const sheet = page.getByRole("region", { name: "Verdict, time and rig" });
  const height = async () => (await sheet.boundingBox())!.height;
  const half = await height();
  const handle = page.getByRole("button", { name: /^Height of the sheet/ });
  await handle.focus();
  await page.keyboard.press("ArrowUp");
  await expect.poll(height).toBeGreaterThan(half + 100);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await expect.poll(height).toBeLessThan(half - 100);
  await handle.tap();
  await expect.poll(height).toBe(half);
  expect(problems).toEqual([]);
});

it("never scrolls sideways", async () => {
  const { page } = await app.visit({ viewport: PHONE });
  await computed(page);
  for (const viewport of [
    PHONE,
    { width: 320, height: 640 },
    { width: 768, height: 1024 },
    { width: 1000, height: 640 },
  ]) {
    await page.setViewportSize(viewport);
    await still(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  }
});

it("keeps what belongs to the scene in reach in a low window, beside the open rig sheet", async () => {
  const { page, problems } = await app.visit({ quickLookAlone: true, viewport: { width: 1000, height: 600 } });
  await computed(page);
  await choose(page, "What happens", "the main line fails");
  await openRig(page);
  await choose(page, "View", "The whole line");
  await page.getByRole("button", { name: "Forces", exact: true }).click();
  expect(problems).toEqual([]);
});
