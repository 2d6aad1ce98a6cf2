/** When something underneath gives way: graphics, the worker, the network. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { type App, answer, computed, ELEVATION, SPACE, startApp } from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await startApp({ flat: false });
});
afterAll(() => app.close());

it("draws the fall in space, from every side, without a word on the console", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
  await page.locator(SPACE).waitFor({ state: "visible" });
  for (const view of ["The whole line", "From anchor A", "Drawing from the side", "Close to the fall"]) {
    await page.getByRole("combobox", { name: "View" }).click();
    await page.getByRole("option", { name: view }).click();
    await page.waitForTimeout(300);
  }
  await page.getByRole("button", { name: "Forces", exact: true }).click();
  await page.waitForTimeout(300);
  expect(problems).toEqual([]);
});

it("draws the elevation where there is no WebGL", async () => {
  const plain = await startApp({ flat: true });
  try {
    const { page, problems } = await plain.visit();
    expect(await page.evaluate(() => document.createElement("canvas").getContext("webgl2"))).toBeNull();
    await computed(page);
    await page.locator(ELEVATION).first().waitFor();
    expect(await answer(page)).toContain("Hardest pull");
    expect(problems).toEqual([]);
  } finally {
    await plain.close();
  }
});

it("comes back after the graphics context was lost", async () => {
  const { page } = await app.visit();
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
  const { page } = await app.visit({
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
  await page.getByRole("combobox", { name: "Mesh" }).click();
  await page.getByRole("option", { name: /^Standard mesh/ }).click();
  await page.waitForFunction(() => Number(document.querySelector("[role=progressbar]")?.ariaValueNow) > 0);
  // A worker that dies is heard of as an error event.
  await page.evaluate(() => {
    const worker = (globalThis as { workers?: Worker[] }).workers!.at(-1)!;
    worker.terminate();
    worker.dispatchEvent(new ErrorEvent("error", { message: "out of memory" }));
  });
  await page.getByText(/The fall was not computed: The computation stopped unexpectedly/).waitFor();
  await page.getByRole("combobox", { name: "Mesh" }).click();
  await page.getByRole("option", { name: /^Coarse mesh/ }).click();
  await page
    .getByText(/Hardest pull on your harness/)
    .first()
    .waitFor();
});

it("opens without a network after the first visit", async () => {
  const { page, problems } = await app.visit();
  await computed(page);
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
