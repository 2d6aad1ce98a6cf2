/** What the page may load and do, what it asks for, and where it says what its numbers were checked against. */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { type App, choose, computed, PHONE, sharedApp, still, violations } from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

/** Runs in the page before anything of the app: notes what breaks its policy. */
const listen = () => {
  const broken: string[] = [];
  Object.assign(window, { broken });
  document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) =>
    broken.push(`${violatedDirective}: ${blockedURI}`),
  );
};
const broken = (page: Page) => page.evaluate(() => (window as unknown as { broken: readonly string[] }).broken);

describe("the served page", () => {
  test("sends its policy with every file, in the page as well, and nothing for a path that is not there", async () => {
    const page = await fetch(app.url);
    const html = await page.text();
    const script = /src="\.\/(assets\/[^"]+\.js)"/.exec(html)![1]!;
    for (const answer of [page, await fetch(app.url + script)]) {
      expect(answer.status).toBe(200);
      const policy = answer.headers.get("content-security-policy")!;
      expect(policy).toContain("default-src 'self'");
      expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval';");
      expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
      expect(policy).toContain("frame-ancestors 'none'");
      expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
      expect(answer.headers.get("referrer-policy")).toBe("no-referrer");
      expect(answer.headers.get("permissions-policy")).toContain("camera=()");
    }
    const own = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)![1]!.replaceAll("&#39;", "'");
    expect(own).toContain("default-src 'self'; script-src 'self' 'wasm-unsafe-eval'");
    expect(html.indexOf("Content-Security-Policy")).toBeLessThan(html.indexOf("<script"));
    const security = readFileSync(new URL("../../SECURITY.md", import.meta.url), "utf8");
    for (const name of ["content-security-policy", "permissions-policy", "cross-origin-opener-policy"])
      expect(security).toContain(`\`${(await fetch(app.url)).headers.get(name)}\``);
    expect(html).not.toMatch(/<script>|<style|style="|href="data:/);
    for (const path of ["nowhere", "nowhere.html", "assets/nowhere.js", "../package.json"])
      expect((await fetch(app.url + path)).status, path).toBe(404);
  });

  test("breaks its policy nowhere, and asks for nothing but its own files", async () => {
    const { page, problems } = await app.visit({ installs: true, before: listen });
    const asked: string[] = [];
    page.on("request", (request) => asked.push(`${request.method()} ${request.url()}`));
    await computed(page);
    await page.getByRole("button", { name: "Rig", exact: true }).click();
    await choose(page, "What happens", /leash/);
    await computed(page);
    for (const view of ["Layouts", "Wear", "Lessons"]) {
      await page.getByRole("button", { name: view, exact: true }).click();
      await page.getByRole("button", { name: "How do we know?" }).first().waitFor();
      await still(page);
    }
    expect(await broken(page)).toEqual([]);
    expect(problems).toEqual([]);
    expect(asked.filter((one) => !one.startsWith(`GET ${app.url}`) && !one.startsWith("GET blob:"))).toEqual([]);
  });

  test("allows no script in line", async () => {
    const { page } = await app.visit({ before: listen });
    await computed(page);
    await page.evaluate(() => {
      const script = document.createElement("script");
      script.textContent = "document.body.dataset.ran = 'yes'";
      document.body.append(script);
    });
    expect(await page.evaluate(() => document.body.dataset.ran)).toBeUndefined();
    // Once by the header, once by the page's own.
    const told = await broken(page);
    expect(told.length).toBeGreaterThan(0);
    for (const one of told) expect(one).toBe("script-src-elem: inline");
  });
});

describe("a known error", () => {
  const list = (from: string, to: string) =>
    JSON.stringify({
      format: "secondline/errata/1",
      errata: [{ date: "2027-01-02", from, to, what: "Loads are too low.", remedy: "Change to the newer version." }],
    });
  const told = "Known error of this version, told on 2 Jan 2027: Loads are too low. Change to the newer version.";

  test("of the version that runs is shown when the served list has it, and at every visit again", async () => {
    const { page } = await app.visit({ installs: true });
    await page.context().route("**/errata.json", (route) => route.fulfill({ body: list("0.0.0", "999.0.0") }));
    for (let visit = 0; visit < 2; visit++) {
      await page.reload();
      const notice = page.getByRole("region", { name: "Messages" }).getByText(told);
      await notice.waitFor();
      await page.getByRole("button", { name: "Close this message" }).last().click();
      await notice.waitFor({ state: "detached" });
    }
  });

  test("of another version is not shown, and a list that is none changes nothing", async () => {
    for (const body of [list("999.0.0", "999.0.1"), "<html></html>"]) {
      const { page, problems } = await app.visit({ installs: true });
      await page.context().route("**/errata.json", (route) => route.fulfill({ body }));
      const asked = page.waitForResponse("**/errata.json");
      await page.reload();
      await asked;
      await computed(page);
      expect(await page.getByText("Known error").count()).toBe(0);
      expect(problems).toEqual([]);
    }
  });

  test("is a list that the app serves, empty or not", async () => {
    const answer = await fetch(`${app.url}errata.json`);
    expect(answer.status).toBe(200);
    expect(await answer.json()).toMatchObject({ format: "secondline/errata/1", errata: expect.any(Array) });
  });
});

describe("How do we know?", () => {
  test("is one step from the verdict, says that no fall was measured, and lists its sources", async () => {
    const { page, problems } = await app.visit({ viewport: PHONE, hasTouch: true, isMobile: true });
    await page.getByRole("button", { name: "How do we know?" }).click();
    const sheet = page.getByRole("dialog", { name: "How do we know?" });
    await sheet.getByText("No number has been checked against a fall that somebody measured.").waitFor();
    await sheet
      .getByRole("button", { name: /^The \d+ sources$/ })
      .first()
      .click();
    await sheet.getByText("code_aster, validation test SSNL114").waitFor();
    await sheet.getByRole("button", { name: "Licences of others' work" }).click();
    await sheet.getByText("SIL OPEN FONT LICENSE").first().waitFor();
    await still(page);
    expect(await violations(page)).toEqual([]);
    await sheet.getByRole("button", { name: "Close" }).click();
    await sheet.waitFor({ state: "detached" });
    expect(problems).toEqual([]);
  });
});
