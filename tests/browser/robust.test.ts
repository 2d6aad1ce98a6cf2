/** When something underneath gives way: graphics, the worker, the network. */
import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { type App, answer, choose, computed, ELEVATION, recomputed, SPACE, sharedApp } from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: false });
});

/** Small: a software rasteriser pays for every pixel. */
const SMALL = { viewport: { width: 1000, height: 640 } };

it("draws the fall in space, from every side, without a word on the console", async () => {
  const { page, problems } = await app.visit({ ...SMALL, before: countDrawing });
  await computed(page);
  await page.locator(SPACE).waitFor({ state: "visible" });
  const elevations = await page.locator(ELEVATION).count();
  await drawnAnew(page, () => choose(page, "View", "The whole line"));
  await drawnAnew(page, () => choose(page, "View", "From anchor A"));
  await choose(page, "View", "Drawing from the side");
  await page.locator(SPACE).waitFor({ state: "hidden" });
  await expect.poll(() => page.locator(ELEVATION).count()).toBeGreaterThan(elevations);
  await choose(page, "View", "Close to the fall");
  await page.locator(SPACE).waitFor({ state: "visible" });
  await drawnAnew(page, () => page.getByRole("button", { name: "Forces", exact: true }).click());
  expect(problems).toEqual([]);
});

/** Counts what is drawn in space, in `document.drawn`. */
function countDrawing(): void {
  const pen = WebGL2RenderingContext.prototype;
  const counted = document as unknown as { drawn: number };
  counted.drawn = 0;
  const draw = pen.drawElements;
  pen.drawElements = function (...what) {
    counted.drawn++;
    draw.apply(this, what);
  };
}

/** Something that changes the picture in space has changed it. */
async function drawnAnew(page: Page, change: () => Promise<unknown>): Promise<void> {
  const drawn = () => page.evaluate(() => (document as unknown as { drawn: number }).drawn);
  const before = await drawn();
  await change();
  await expect.poll(drawn).toBeGreaterThan(before);
}

it("draws the elevation where there is no WebGL", async () => {
  const plain = await sharedApp({ flat: true });
  const { page, problems } = await plain.visit();
  expect(await page.evaluate(() => document.createElement("canvas").getContext("webgl2"))).toBeNull();
  await computed(page);
  await page.locator(ELEVATION).first().waitFor();
  expect(await answer(page)).toContain("Hardest pull");
  expect(problems).toEqual([]);
});

it("comes back after the graphics context was lost", async () => {
  const { page } = await app.visit(SMALL);
  await computed(page);
  const canvas = page.locator(SPACE);
  const elevations = page.locator(ELEVATION);
  await canvas.waitFor({ state: "visible" });
  const before = await elevations.count();
  await page.evaluate(() => {
    const element = document.querySelector<HTMLCanvasElement>("[data-scene] canvas[data-engine]")!;
    const lose = element.getContext("webgl2")!.getExtension("WEBGL_lose_context")!;
    (globalThis as { restore?: () => void }).restore = () => lose.restoreContext();
    lose.loseContext();
  });
  await expect.poll(() => elevations.count()).toBeGreaterThan(before);
  await page.evaluate(() => (globalThis as { restore?: () => void }).restore!());
  await canvas.waitFor({ state: "visible" });
  await expect.poll(() => elevations.count()).toBe(before);
});

it("tells of a worker that dies in mid-run, and runs again in a new one", async () => {
  // Without the scene in space, which a software rasteriser would draw all the while.
  const plain = await sharedApp({ flat: true });
  const { page } = await plain.visit({
    first: true,
    before: () => {
      const workers: Worker[] = [];
      (globalThis as { workers?: Worker[] }).workers = workers;
      const Real = Worker;
      globalThis.Worker = class extends Real {
        constructor(url: string | URL, options?: WorkerOptions) {
          super(url, options);
          workers.push(this);
        }
      };
    },
  });
  await computed(page);
  await page.evaluate(() => {
    // From within the page, in the moment the run has shown its first progress: it cannot be over by then.
    new MutationObserver((_, observer) => {
      if (!(Number(document.querySelector("main [role=progressbar]")?.ariaValueNow) > 0)) return;
      observer.disconnect();
      const worker = (globalThis as { workers?: Worker[] }).workers!.at(-1)!;
      worker.terminate();
      // A worker that dies is heard of as an error event.
      worker.dispatchEvent(new ErrorEvent("error", { message: "out of memory" }));
    }).observe(document.body, { childList: true, subtree: true, attributes: true });
  });
  await choose(page, "Mesh", /^Standard mesh/);
  await page.getByText(/The fall was not computed: The computation stopped unexpectedly/).waitFor();
  await recomputed(page, () => choose(page, "Mesh", /^Coarse mesh/));
  expect(await answer(page)).toContain("Hardest pull on your harness");
});

it("opens without a network after the first visit", async () => {
  const { page, problems } = await app.visit({ ...SMALL, installs: true });
  await computed(page);
  // All of the visit: the scene's code comes last, and not by way of the worker yet.
  await page.locator(SPACE).waitFor();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.context().setOffline(true);
  await page.reload();
  await computed(page);
  expect(await answer(page)).toContain("Hardest pull");
  await page.locator(SPACE).waitFor();
  expect(problems).toEqual([]);
});
