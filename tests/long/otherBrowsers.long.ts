/**
 * The newcomer's way through the built page in three browsers: it says the same of the same rig in each. Chromium always; Firefox
 * and WebKit (Debian's `firefox-esr` and `webkit2gtk-driver` with `xvfb`) where installed.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { type OwnApp, startApp } from "../browser/app.ts";
import { hasFirefox, hasWebKit, WITHOUT_FIREFOX, WITHOUT_WEBKIT } from "./debianBrowsers.ts";
import { type Driven, driven, inChromium } from "./driven.ts";
import { type Told, text, walkAsNewcomer } from "./newcomer.ts";
import { until } from "./until.ts";
import { buildWatched, problemsOf } from "./watchedPage.ts";
import { firefoxDriver, type WebDriver, webKitDriver } from "./webDriver.ts";

let app: OwnApp;
const folder = mkdtempSync(join(tmpdir(), "secondline-browsers-"));

beforeAll(async () => {
  const outDir = join(folder, "page");
  await buildWatched(outDir);
  app = await startApp({ flat: true, outDir });
}, 600_000);
afterAll(async () => {
  await app.close();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

async function opened(starting: Promise<WebDriver>): Promise<Driven> {
  const driver = await starting;
  onTestFinished(() => driver.quit());
  return driven(driver, app.url);
}

/** Where there is no WebGL, the side elevation stands in for the scene in space. */
async function expectScene(page: Driven): Promise<void> {
  const hasSpace = await page.ask(() => document.createElement("canvas").getContext("webgl2") !== null, "");
  const scene = `[data-scene] canvas${hasSpace ? "[data-engine]" : ":not([data-engine])"}`;
  await until(`a scene: ${scene}`, () => page.ask((scene) => document.querySelector(scene) !== null, scene));
}

describe("a newcomer comes to the own rig's verdict", () => {
  let inChrome: Told | undefined;

  async function walk(page: Driven): Promise<Told> {
    await expectScene(page);
    const told = await walkAsNewcomer(page);
    await expectScene(page);
    expect(await problemsOf(page)).toEqual([]);
    return told;
  }

  it("in Chromium", async () => {
    const told = await walk(await inChromium(app));
    // A value that nobody confirmed never lets a rig hold.
    expect(told.verdict).toMatch(/^(open|thin|fails)$/);
    expect(told.head).toMatch(/\d+ values are not confirmed/);
    expect(told.parts.length).toBeGreaterThan(15);
    expect(told.demoFall).toMatch(/caught you .* down\. Hardest pull on your harness: [\d.]+ kN\./);
    expect(told.fall).toMatch(/[\d.]+ m down\. Hardest pull on your harness: [\d.]+ kN\./);
    expect(told.loads).toMatch(/Drop ?[\d.]+ m/);
    inChrome = told;
  });

  it("in Firefox, which says the same", async ({ skip }) => {
    skip(!hasFirefox, WITHOUT_FIREFOX);
    expect(await walk(await opened(firefoxDriver(folder)))).toEqual(inChrome);
  });

  it("in WebKit, which says the same", async ({ skip }) => {
    skip(!hasWebKit, WITHOUT_WEBKIT);
    expect(await walk(await opened(webKitDriver()))).toEqual(inChrome);
  });
});

it("shows the page in a WebKit whose language is no valid tag", async ({ skip }) => {
  skip(!hasWebKit, WITHOUT_WEBKIT);
  const page = await opened(webKitDriver("C.UTF-8"));
  const language = await page.ask(() => navigator.language, "");
  expect(language).toBe("C");
  expect(() => Intl.getCanonicalLocales(language)).toThrow();
  await until("the first verdict", async () => (await text(page, "header[data-verdict]")) !== "");
  await until("a fall", async () => (await text(page, "[data-testid=answer]")).includes("kN"));
  await expectScene(page);
  expect(await problemsOf(page)).toEqual([]);
});
