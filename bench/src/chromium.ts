/** Runs the worker's tables in a headless browser, when there is one. */
import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";
// @ts-expect-error: a plain script without types
import { CHROME_ARGS, findChrome } from "../../scripts/chrome.mjs";
import type { WorkerAnswer, WorkerOrder } from "./worker.ts";

export async function inChromium(order: WorkerOrder): Promise<{ version: string; answer: WorkerAnswer } | undefined> {
  const executablePath = findChrome() as string | undefined;
  if (!executablePath) return undefined;
  const browser = await chromium.launch({ executablePath, args: CHROME_ARGS as string[] });
  try {
    const page = await browser.newPage();
    const code = readFileSync(new URL("worker.js", import.meta.url), "utf8");
    const answer = await page.evaluate(
      ([text, message]) =>
        new Promise<WorkerAnswer>((resolve, reject) => {
          const worker = new Worker(URL.createObjectURL(new Blob([text], { type: "text/javascript" })));
          worker.onmessage = ({ data }) => resolve(data as WorkerAnswer);
          worker.onerror = ({ message: what }) => reject(new Error(what));
          worker.postMessage(message);
        }),
      [code, order] as const,
    );
    return { version: browser.version(), answer };
  } finally {
    await browser.close();
  }
}
