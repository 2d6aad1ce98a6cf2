/** Pictures as their users save them: valid files that show something, and never without their legend and cautions. */
import { readFile } from "node:fs/promises";
import type { Download, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { type App, computed, SPACE, sharedApp } from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: false });
});

async function saved(page: Page, menu: string, entry: RegExp): Promise<{ name: string; bytes: Buffer }> {
  await page.getByRole("button", { name: menu, exact: true }).click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("menuitem", { name: entry }).click(),
  ]);
  return contentOf(download);
}

async function contentOf(download: Download): Promise<{ name: string; bytes: Buffer }> {
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

/** Size of a PNG and how many colours a grid of its middle shows, decoded by the browser itself. */
function decoded(page: Page, png: Buffer): Promise<{ width: number; height: number; colours: number }> {
  return page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const { width, height } = bitmap;
    const canvas = new OffscreenCanvas(width, height);
    const context = canvas.getContext("2d")!;
    context.drawImage(bitmap, 0, 0);
    const { data } = context.getImageData(0, Math.round(height * 0.2), width, Math.round(height * 0.3));
    const seen = new Set<number>();
    for (let i = 0; i < data.length; i += 4 * 97) seen.add((data[i]! << 16) | (data[i + 1]! << 8) | data[i + 2]!);
    return { width, height, colours: seen.size };
  }, png.toString("base64"));
}

/** What an SVG says, or the fault that the browser finds in it. */
function wordsOf(page: Page, svg: string): Promise<string> {
  return page.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, "image/svg+xml");
    const fault = parsed.querySelector("parsererror");
    if (fault) return `not well-formed: ${fault.textContent}`;
    return [...parsed.querySelectorAll("text")].map((one) => one.textContent).join(" ");
  }, svg);
}

const CAUTION = ["This is a model of the rig, not the rig.", "Do not rig from these numbers alone.", "is invented"];

test("scene, side view and plot are saved as pictures with legend, cautions and what they were computed from", async () => {
  // Small: a software rasteriser pays for every pixel.
  const { page, problems } = await app.visit({ viewport: { width: 1000, height: 640 } });
  await computed(page);
  await page.locator(SPACE).waitFor();

  // By keys alone.
  await page.getByRole("button", { name: "Save a picture" }).focus();
  await page.keyboard.press("Enter");
  const twice = page.getByRole("menuitem", { name: /^Twice as large/ });
  // The menu takes the focus a moment after it has opened; a key before that goes nowhere.
  await page.getByRole("menuitem").and(page.locator(":focus")).waitFor();
  await page.keyboard.press("ArrowDown");
  await twice.and(page.locator(":focus, [data-highlighted]")).waitFor();
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  const scene = await contentOf(download);
  expect(scene.name).toMatch(/^example-crag-.*main-line-fails-at-anchor-a.*\.png$/);
  const body = (await page.locator("[data-scene]").boundingBox())!;
  const { width, height, colours } = await decoded(page, scene.bytes);
  expect(width).toBe(2 * Math.round(body.width));
  // Title above, legend and cautions below.
  expect(height).toBeGreaterThan(2 * body.height + 300);
  expect(colours).toBeGreaterThan(40);
  await page.getByRole("status").filter({ hasText: "The picture is saved." }).waitFor({ state: "attached" });

  const side = await saved(page, "Save a picture", /^Drawing from the side/);
  expect(side.name).toMatch(/\.svg$/);
  const sideWords = await wordsOf(page, side.bytes.toString());
  const legend = ["main line", "backup", "tension", "strength"];
  for (const words of [...CAUTION, ...legend, "Anchor A", "Input "]) expect(sideWords).toContain(words);

  const plot = await saved(page, "Save", /^Plot as SVG/);
  expect(plot.name).toMatch(/forces\.svg$/);
  const plotWords = await wordsOf(page, plot.bytes.toString());
  for (const words of [...CAUTION, "leash", "main at A", "kN", "main line fails"]) expect(plotWords).toContain(words);
  expect(problems).toEqual([]);
});
