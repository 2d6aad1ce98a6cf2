/** Random use of the page: keys, clicks, drags and entries as they come, from a seeded generator. */
import type { Page } from "playwright-core";
import { choose, computed, recomputed, still } from "./app.ts";

export type Random = () => number;

/** Numbers from 0 to 1, the same for the same seed. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const oneOf = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)]!;

/** What people and cats type: right, doubtful and wrong. */
const ENTRIES = ["60 m", "25 m", "80 kg", "5 %", "12 %", "3 kN", "2.1 m", "0.4", "-5 m", "1 parsec", "0", "", "ring"];
const KEYS = [
  ..."ArrowLeft ArrowRight ArrowUp ArrowDown Home End PageUp PageDown Tab Shift+Tab Enter Escape Space".split(" "),
  ..."[ ] , . l m + - 0 Control+z Control+y".split(" "),
];
const VIEWS = ["One rig", "Layouts", "Wear", "Lessons"];

interface Target {
  readonly kind: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** Something in sight that can be used, drawn by lot; undefined when there is nothing. */
function target(page: Page, lot: number): Promise<Target | undefined> {
  return page.evaluate((lot) => {
    const things = [
      ...document.querySelectorAll<HTMLElement>("button, a[href], input, [role], [tabindex='0'], summary, canvas"),
    ].filter((thing) => {
      const box = thing.getBoundingClientRect();
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      if (box.width < 4 || x < 0 || y < 0 || x > innerWidth || y > innerHeight) return false;
      const hit = document.elementFromPoint(x, y);
      return hit !== null && (thing.contains(hit) || hit.contains(thing));
    });
    const thing = things[Math.floor(lot * things.length)];
    if (!thing) return undefined;
    const box = thing.getBoundingClientRect();
    const typed = thing instanceof HTMLInputElement && thing.type !== "range";
    const slides = thing.matches("input[type=range], [role=slider], canvas, [data-scene]");
    return {
      kind: typed ? "field" : slides ? "surface" : "button",
      x: box.x + box.width / 2,
      y: box.y + box.height / 2,
      width: box.width,
    };
  }, lot);
}

/** One thing done by lot. */
export async function act(page: Page, random: Random): Promise<void> {
  const lot = random();
  if (lot < 0.2) return page.keyboard.press(oneOf(random, KEYS));
  if (lot < 0.26) return goTo(page, oneOf(random, VIEWS));
  const found = await target(page, random());
  if (!found) return page.keyboard.press("Escape");
  const { kind, x, y, width } = found;
  if (kind === "field") {
    await page.mouse.click(x, y);
    await page.keyboard.press("Control+a");
    await page.keyboard.insertText(oneOf(random, ENTRIES));
    return page.keyboard.press("Tab");
  }
  if (kind === "button" || random() < 0.2) return page.mouse.click(x, y);
  if (random() < 0.3) {
    await page.mouse.move(x, y);
    return page.mouse.wheel(0, (random() - 0.5) * 400);
  }
  await page.mouse.move(x + (random() - 0.5) * width, y);
  await page.mouse.down();
  await page.mouse.move(x + (random() - 0.5) * width, y + (random() - 0.5) * 60, { steps: 5 });
  return page.mouse.up();
}

/** Where something lies over the page, such as an open dialog, that is what gets the click. */
async function goTo(page: Page, view: string): Promise<void> {
  const box = await page.evaluate((view) => {
    const tabs = [...document.querySelectorAll("nav[aria-label='Views'] button")];
    const tab = tabs.find(({ textContent }) => textContent === view);
    if (!tab) throw new Error(`the page has lost its views; it says: ${document.body.textContent.slice(0, 300)}`);
    const { x, y, width, height } = tab.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  }, view);
  await page.mouse.click(box.x, box.y);
}

/** What lies over the page and takes its clicks. */
const OVER = "[role=menu], [role=listbox], [role=dialog], [role=alertdialog]";

/** Brings the page back to one state from wherever it is: the demo rig, one what-if run twice, one layout, nothing open. */
export async function tidy(page: Page): Promise<void> {
  // What was asked for last is there: the code of a dialog comes when it is first opened.
  await page.waitForLoadState("networkidle");
  await still(page);
  const leave = page.getByRole("button", { name: "Leave without a rig" });
  const views = page.getByRole("navigation", { name: "Views" });
  // What lies over the page is closed one by one: a menu, a list, a dialog, one that comes late too. Under them nothing can be reached.
  const reached = async () => (await views.count()) > 0 && (await page.locator(OVER).count()) === 0;
  for (let i = 0; i < 12 && !(await reached()); i++) {
    if (await leave.isVisible()) await leave.click();
    else await page.keyboard.press("Escape");
    await still(page);
  }
  if (await leave.isVisible()) await leave.click();
  await views.getByRole("button", { name: "Layouts" }).click();
  await page.getByRole("region", { name: "Layout A", exact: true }).waitFor();
  const done = page.getByRole("button", { name: "Done", exact: true });
  if (await done.isVisible()) await done.click();
  const more = page.getByRole("button", { name: /^More for layout [BCD]$/ });
  while ((await more.count()) > 0) {
    const before = await more.count();
    await more.last().click();
    await page.getByRole("menuitem", { name: "Take away" }).click();
    await page.waitForFunction(
      (before) => document.querySelectorAll("button[aria-label^='More for layout']").length === before,
      before,
    );
  }
  await views.getByRole("button", { name: "One rig" }).click();
  await page.getByRole("button", { name: "File" }).click();
  await page.getByRole("menuitem", { name: /^Demo: a sound rig/ }).click();
  const messages = page.getByRole("button", { name: "Close this message" });
  while ((await messages.count()) > 0) await messages.first().click();
  await choose(page, "Mesh", "Coarse mesh");
  for (const what of ["the main line fails", "the walker falls into the leash", "the main line fails"])
    await choose(page, "What happens", what);
  await choose(page, "View", "Close to the fall");
  await page.getByRole("tab", { name: "Forces" }).click();
  await computed(page);
  // Twice, so that the run before is one of the same length.
  await recomputed(page, () => page.getByRole("button", { name: "Run again" }).click());
  await recomputed(page, () => page.getByRole("button", { name: "Run again" }).click());
  await still(page);
}
