/**
 * The same rig has the same numbers in every JavaScript engine, to the last bit: catches amplify what exp, cos and their like
 * leave to the engine. Node and Chromium always; Firefox and WebKit (Debian's `firefox-esr` and `webkit2gtk-driver` with `xvfb`) where installed.
 */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
// @ts-expect-error a plain script, shared with the launcher
import { CHROME_ARGS, ensureChrome } from "../../scripts/chrome.mjs";
import {
  hasFirefox,
  hasWebKit,
  MINI_BROWSER,
  type Started,
  start,
  startFirefox,
  startWebKit,
  WITHOUT_FIREFOX,
  WITHOUT_WEBKIT,
} from "./debianBrowsers.ts";
import { quickLook } from "./everyEngine.ts";

const rig = JSON.parse(readFileSync(new URL("../../demo-data/sound-rig.json", import.meta.url), "utf8")) as unknown;
/** Patience with a browser on a slow machine [ms]. */
const PATIENCE = 300_000;

let script = "";
let server: Server;
let answered: (body: string) => void = () => undefined;
const folder = mkdtempSync(`${tmpdir()}/secondline-engines-`);

beforeAll(async () => {
  const entry = fileURLToPath(new URL("everyEngine.ts", import.meta.url));
  const built = await build({
    logLevel: "error",
    configFile: false,
    build: { write: false, lib: { entry, formats: ["iife"], name: "engines" } },
  });
  const output = (Array.isArray(built) ? built : [built]).flatMap((one) => ("output" in one ? one.output : []));
  script = output.map((one) => ("code" in one ? one.code : "")).join("\n");
  server = createServer((request, response) => {
    if (request.url === "/answer") {
      let body = "";
      request.on("data", (part: Buffer) => {
        body += part.toString();
      });
      request.on("end", () => {
        response.end();
        answered(body);
      });
      return;
    }
    if (request.url === "/script.js") {
      response.setHeader("content-type", "text/javascript");
      response.end(`${script}\nfetch("/answer", { method: "POST", body: engines.quickLook(${JSON.stringify(rig)}) });`);
      return;
    }
    response.setHeader("content-type", "text/html");
    response.end("<!doctype html><title>numbers</title><script src=/script.js></script>");
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
}, PATIENCE);

afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

/** What a browser says of the rig. `open`: starts it with this address. */
async function inBrowser(open: (url: string) => Started | Promise<Started>): Promise<string> {
  const body = new Promise<string>((resolve) => {
    answered = resolve;
  });
  const browser = await open(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  try {
    return await body;
  } finally {
    browser.stop();
  }
}

describe("loads and drops, to the last bit,", () => {
  const here = quickLook(rig);

  it(
    "are the same in Chromium as in Node",
    async () => {
      const args = ["--headless", ...(CHROME_ARGS as string[]), `--user-data-dir=${folder}/chromium`];
      expect(await inBrowser((url) => start(ensureChrome() as string, [...args, url]))).toBe(here);
    },
    PATIENCE,
  );

  it(
    "are the same in Firefox",
    async ({ skip }) => {
      skip(!hasFirefox, WITHOUT_FIREFOX);
      expect(await inBrowser((url) => startFirefox(mkdtempSync(`${folder}/firefox-`), [url]))).toBe(here);
    },
    PATIENCE,
  );

  it(
    "are the same in WebKit",
    async ({ skip }) => {
      skip(!hasWebKit, WITHOUT_WEBKIT);
      expect(await inBrowser((url) => startWebKit(MINI_BROWSER, [url]))).toBe(here);
    },
    PATIENCE,
  );
});
