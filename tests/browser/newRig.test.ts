/** The way in: a newcomer's own rig, from the first visit to its verdict; and a browser whose language is none. */
import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { type App, computed, expectAccessible, kept, PHONE, rigSheetOpen, sharedApp, still } from "./app.ts";

let app: App;
beforeAll(async () => {
  app = await sharedApp({ flat: true });
});

async function newRig(page: Page): Promise<void> {
  await page.getByRole("button", { name: "File" }).click();
  await page.getByRole("menuitem", { name: /^New rig/ }).click();
  await page.getByRole("heading", { name: "New rig" }).waitFor();
}
const state = (page: Page) => page.getByRole("complementary", { name: "The rig so far" }).getByRole("status");
/** Neither scrolled away nor under something else. */
const inSight = (one: Locator) =>
  one.evaluate((element) => {
    const { left, bottom } = element.getBoundingClientRect();
    return element.contains(document.elementFromPoint(left + 4, bottom - 4));
  });
const field = (page: Page, name: string) => page.getByRole("textbox", { name, exact: true });

describe("a newcomer", () => {
  it("comes to a verdict of the own rig in a dozen steps beyond typing, and it counts what is not confirmed", async () => {
    const { page, problems } = await app.visit({ first: true });
    let steps = 2;
    await newRig(page);
    await field(page, "Name").fill("Quarry line");
    await field(page, "Span").fill("62 m");
    await field(page, "Lowest ground, below A").fill("40 m");
    await field(page, "Tension").fill("2 kN");
    const latitude = page.getByRole("combobox", { name: "Latitude" });
    expect(await latitude.textContent()).toContain("Not said: counts as below 30°");
    for (const act of [
      () => latitude.click(),
      () => page.getByRole("option", { name: "Above 50°" }).click(),
      () => page.getByRole("checkbox", { name: "Right as it stands" }).nth(3).click(),
      () => page.getByRole("button", { name: "All of it is new" }).click(),
      () => page.getByRole("button", { name: "Make this rig" }).click(),
    ]) {
      await act();
      steps += 1;
    }
    await computed(page);
    expect(steps).toBeLessThanOrEqual(12);
    await expect.poll(() => page.locator("header[data-verdict]").textContent()).toMatch(/\d+ values are not confirmed/);
    expect(await page.locator("header[data-verdict]").getAttribute("data-verdict")).not.toBe("holds");
    await rigSheetOpen(page);
    expect(await field(page, "Span").inputValue()).toBe("62 m");
    // What was said is not marked; what was not, is.
    expect(await field(page, "Span").getAttribute("data-unconfirmed")).toBeNull();
    expect(await field(page, "Mass of the walker").getAttribute("data-unconfirmed")).toBe("");
    const count = page.getByRole("complementary", { name: "Rig sheet" }).getByText(/^\d+ values are not confirmed\.$/);
    const before = Number.parseInt((await count.textContent())!, 10);
    await page.getByRole("button", { name: "Confirm Mass of the walker as it stands" }).first().click();
    await expect.poll(async () => Number.parseInt((await count.textContent())!, 10)).toBe(before - 1);
    await field(page, "Length of the leash").fill("1.5 m");
    await expect.poll(async () => Number.parseInt((await count.textContent())!, 10)).toBe(before - 2);
    // The rig says where it hangs, until it is asked to say nothing of it any more.
    await page.getByRole("button", { name: /^Site and ground/ }).click();
    expect(await latitude.textContent()).toContain("Above 50°");
    await latitude.click();
    await page.getByRole("option", { name: "Not said: counts as below 30°" }).click();
    await expect.poll(() => latitude.textContent()).toContain("Not said");
    await page.getByRole("button", { name: "Undo: Latitude" }).click();
    await expect.poll(() => latitude.textContent()).toContain("Above 50°");
    // A part that is added has values that nobody has looked at either, and goes in one step.
    await page.getByRole("button", { name: /^Connections and tapes/ }).click();
    await page.getByRole("button", { name: "Add a connection" }).click();
    await expect.poll(async () => Number.parseInt((await count.textContent())!, 10)).toBe(before);
    await page.getByRole("button", { name: "Undo: Added connection" }).click();
    await expect.poll(async () => Number.parseInt((await count.textContent())!, 10)).toBe(before - 2);
    await still(page);
    await expectAccessible(page);
    await kept(page, '"name":"Quarry line"');
    expect(problems).toEqual([]);
  });

  it("is told what is wrong beside its field, with what would do; nothing is lost on a reload", async () => {
    const { page, problems } = await app.visit();
    await newRig(page);
    await page.locator("[aria-label^='The rig from the side: span 50 m']").waitFor();
    await field(page, "Span").fill("70");
    await field(page, "Connections").fill("90 m");
    await expect.poll(() => state(page).textContent()).toContain("2 answers are to be put right");
    expect(await page.getByRole("button", { name: "Make this rig" }).isDisabled()).toBe(true);
    // The last good rig stays in sight.
    await page.getByText("Drawn as it was before").waitFor();
    await expectAccessible(page);
    await page.reload();
    await newRig(page);
    expect(await field(page, "Span").inputValue()).toBe("70");
    await page.getByRole("button", { name: "Write 70 m" }).click();
    await page.getByRole("button", { name: "Write every 15 m" }).click();
    await page.locator("[aria-label^='The rig from the side: span 70 m']").waitFor();
    expect(await state(page).textContent()).toMatch(/^\d+ values are not confirmed\.$/);
    expect(problems).toEqual([]);
  });

  it("is told beside the question that the storage is full, loses nothing by it, saves the answers and goes on to a rig", async () => {
    const { page, problems } = await app.visit();
    await newRig(page);
    await field(page, "Span").fill("62 m");
    await page.evaluate(() => {
      const keep = Storage.prototype.setItem;
      Storage.prototype.setItem = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
      Object.assign(window, { room: () => Object.assign(Storage.prototype, { setItem: keep }) });
    });
    await field(page, "Mass").fill("91 kg");
    const walker = page.getByRole("region", { name: "Walker" });
    await walker.getByText("Not kept on this device: its storage is full.").waitFor();
    const told = page.getByRole("complementary", { name: "The rig so far" }).getByRole("alert");
    expect(await told.textContent()).toContain("They stay as long as this page is open");
    await expectAccessible(page);
    await page.getByRole("button", { name: "Leave without a rig" }).click();
    await newRig(page);
    expect([await field(page, "Span").inputValue(), await field(page, "Mass").inputValue()]).toEqual(["62 m", "91 kg"]);
    await told.waitFor();
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save these answers" }).first().click();
    const saved = await (await saving).path();
    expect(JSON.parse(readFileSync(saved, "utf8"))).toEqual({ span: "62 m", mass: "91 kg" });
    // A file that is none changes nothing; the saved one brings the answers back, also after a new beginning.
    const choose = async (file: { name: string; mimeType: string; buffer: Buffer } | string) => {
      const choosing = page.waitForEvent("filechooser");
      await page.getByRole("button", { name: "Open saved answers" }).click();
      await (await choosing).setFiles(file);
    };
    await page.getByRole("button", { name: "Begin again" }).click();
    await expect.poll(() => field(page, "Mass").inputValue()).toBe("80 kg");
    await choose({ name: "none.json", mimeType: "application/json", buffer: Buffer.from('{"speed": "1"}') });
    await page.getByText(/^none\.json was not opened, and nothing here has changed\./).waitFor();
    await choose(saved);
    await expect.poll(() => field(page, "Mass").inputValue()).toBe("91 kg");
    await page.evaluate(() => (window as unknown as { room: () => void }).room());
    await field(page, "Span").fill("63 m");
    await told.waitFor({ state: "detached" });
    await page.getByRole("button", { name: "Make this rig" }).click();
    await page.getByRole("heading", { name: "New rig", level: 2 }).waitFor({ state: "detached" });
    await rigSheetOpen(page);
    expect(await field(page, "Span").inputValue()).toBe("63 m");
    expect(problems).toEqual([]);
  });

  it("finds every answer with the keyboard alone, and leaves without a rig", async () => {
    const { page } = await app.visit();
    await newRig(page);
    await field(page, "Name").focus();
    for (let i = 0; i < 60; i++) {
      if (await page.getByRole("button", { name: "Make this rig" }).evaluate((one) => one === document.activeElement))
        break;
      await page.keyboard.press("Tab");
    }
    expect(
      await page.getByRole("button", { name: "Make this rig" }).evaluate((one) => one === document.activeElement),
    ).toBe(true);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Example crag, North Gap: sound" }).waitFor();
    await page.getByRole("heading", { name: "New rig" }).waitFor({ state: "detached" });
  });

  it("has room for the finger and the eye on a phone", async () => {
    const { page, problems } = await app.visit({
      viewport: PHONE,
      hasTouch: true,
      isMobile: true,
      colorScheme: "dark",
    });
    // Before anything is touched, the page says for whom it is and where to begin.
    await computed(page);
    await still(page);
    expect(await inSight(page.getByRole("button", { name: "Begin with your own rig" }))).toBe(true);
    await newRig(page);
    await page.locator("[aria-label^='The rig from the side']").waitFor();
    await still(page);
    await expectAccessible(page);
    // The page itself moves neither way: only the questions scroll.
    await page.getByRole("button", { name: "Begin again" }).evaluate((one) => one.scrollIntoView());
    const over = () => {
      const { scrollWidth, scrollHeight } = document.documentElement;
      return [scrollWidth - innerWidth, scrollHeight - innerHeight, scrollY];
    };
    expect(await page.evaluate(over)).toEqual([0, 0, 0]);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>("main button, main input, main [role=combobox], aside button")]
        .filter((one) => !one.closest("label, p, [aria-hidden=true]") && one.checkVisibility())
        .map((one) => one.getBoundingClientRect())
        .filter(({ width, height }) => width > 1 && (height < 43.5 || width < 43.5))
        .map(({ width, height }) => `${width} × ${height}`),
    );
    expect(small).toEqual([]);
    // At the lower edge of the little that is seen, what is wrong with a field comes into sight with the field.
    await field(page, "Connections").evaluate((one) => one.scrollIntoView({ block: "end" }));
    await field(page, "Connections").fill("90 m");
    await expect.poll(() => inSight(page.getByText(/90 m is not on the line/))).toBe(true);
    expect(await page.evaluate(over)).toEqual([0, 0, 0]);
    expect(problems).toEqual([]);
  });
});

it("works in a browser whose language is no valid tag", async () => {
  const { page, problems } = await app.visit({ locale: "en-US@posix" });
  expect(await page.evaluate(() => navigator.language)).toBe("en-US@posix");
  await computed(page);
  await page.locator(".uplot canvas").first().waitFor();
  expect(problems).toEqual([]);
});

/** Hands a file to the button that asks for one. */
async function choose(page: Page, button: string, name: string, text: string): Promise<void> {
  const asked = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: button }).click();
  await (await asked).setFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
}

it("takes a webbing of one's own and a ground in feet, and keeps both with the rig", async () => {
  const { page, problems } = await app.visit();
  await newRig(page);
  await choose(page, "Take the ground from a file (CSV)…", "gully.csv", "0,-1\n100,-130\n200,-2");
  await page.getByText("gully.csv does not say whether it is in metres or feet.").waitFor();
  await page.getByRole("button", { name: "It is in feet" }).click();
  await page.getByText("gully.csv: 3 points, read in feet.").waitFor();
  await field(page, "Span").fill("60 m");
  await page.getByRole("button", { name: "Enter your own webbing or rope…" }).click();
  const form = page.getByRole("dialog", { name: "Your own webbing or rope" });
  const put = (name: string, text: string) => form.getByRole("textbox", { name, exact: true }).fill(text);
  await put("Name", "Blue 25");
  await put("Strength", "28 kN");
  await put("By whom, or where", "its label");
  await put("Weight of a metre", "58 g/m");
  await put("Stretch at load 1", "3 %");
  await put("Stretch at load 2", "2 %");
  await form.getByRole("button", { name: "Keep it" }).click();
  await form.getByText("with more load a webbing is longer, never shorter").waitFor();
  // The field with the fault has the focus, and what is told of a file is in sight.
  const faulty = form.getByRole("textbox", { name: "Stretch at load 2", exact: true });
  await expect.poll(() => faulty.evaluate((one) => one === document.activeElement)).toBe(true);
  await choose(page, "Take it from a file (CSV)…", "pull.csv", "Force (kN);Stretch (%)\n0;0\n1;much");
  await expect.poll(() => inSight(form.getByText(/pull\.csv: nothing is changed/))).toBe(true);
  await still(page);
  await expectAccessible(page);
  await put("Stretch at load 1", "1.5 %");
  await put("Stretch at load 2", "4.2 %");
  await form.getByRole("button", { name: "Keep it" }).click();
  await form.waitFor({ state: "detached" });
  const webbing = page.getByRole("combobox", { name: "Webbing", exact: true });
  await expect.poll(() => webbing.textContent()).toBe("Blue 25");
  await page.getByText("polyester · 28.0 kN · 58 g/m · 4.2 % at 6 kN").waitFor();
  // The trade's word finds it, whatever it is called in the list.
  await page.getByRole("combobox", { name: "Webbing of the backup" }).click();
  await page.getByPlaceholder("Find by name, fibre or width").fill("nylon web");
  await page.getByRole("option", { name: /^Polyamide webbing 25 mm/ }).waitFor();
  expect(await page.getByRole("option").count()).toBe(1);
  await still(page);
  await expectAccessible(page);
  await page.keyboard.press("Enter");
  await page.getByRole("listbox").waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Make this rig" }).click();
  await kept(page, '"id":"blue-25"');
  await kept(page, '["30.48 m","-39.62 m"]');
  expect(problems).toEqual([]);
});

/** Takes hold of a handle in a drawing and lets it go so many pixels away. */
async function drag(page: Page, name: string, dx: number, dy: number): Promise<void> {
  const box = (await page.getByRole("slider", { name, exact: true }).locator("circle").first().boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + dx, y + dy, { steps: 12 });
  await page.mouse.up();
}

it("moves the ground and a connection in the sketch, by hand and by keys; a drag is one step back", async () => {
  const { page, problems } = await app.visit();
  await newRig(page);
  const point = page.getByRole("slider", { name: "Ground, point 2", exact: true });
  const place = () => point.getAttribute("aria-valuetext");
  await expect.poll(place).toBe("25 m from A, 25 m below A");
  const open = await state(page).textContent();
  await drag(page, "Ground, point 2", 60, -60);
  const dropped = (await place())!;
  expect(Number.parseFloat(dropped)).toBeGreaterThan(26);
  await page.getByText("A profile of 3 points, drawn over a guess").waitFor();
  // One point of a guess that was moved confirms none of the others.
  expect(await state(page).textContent()).toBe(open);
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("ArrowUp");
  expect(Number.parseFloat((await place())!)).toBe(Number.parseFloat(dropped) - 0.5);
  await page.keyboard.press("Escape");
  await expect.poll(place).toBe(dropped);
  // Above the line it is told why, and stays at the last place that can be.
  await drag(page, "Ground, point 2", 0, -700);
  await page.getByText(/the ground would be as high as the line, .* It stays at the last place/).waitFor();
  expect(await place()).toMatch(/ below A$/);
  await page.getByRole("button", { name: "Take back the last move" }).click();
  await expect.poll(place).toBe(dropped);
  await drag(page, "Connection 1", 40, 10);
  await expect.poll(() => field(page, "Connections").inputValue()).toMatch(/^1[678](\.5)? m, 30 m, 45 m$/);
  await still(page);
  await expectAccessible(page);

  await page.getByRole("button", { name: "Make this rig" }).click();
  await rigSheetOpen(page);
  await page.getByRole("button", { name: /^Site and ground/ }).click();
  await point.waitFor();
  await expect.poll(place).toBe(dropped);
  await point.scrollIntoViewIfNeeded();
  await drag(page, "Ground, point 2", -30, 20);
  await expect.poll(place).not.toBe(dropped);
  await page.getByRole("button", { name: "Undo: Ground point moved" }).click();
  await expect.poll(place).toBe(dropped);
  // One point more confirms none of the others.
  await page.getByRole("button", { name: "Add a point", exact: true }).click();
  await page.getByRole("slider", { name: "Ground, point 4" }).waitFor();
  await page.getByRole("button", { name: /^Confirm ground.* as it stands$/i }).waitFor();
  expect(problems).toEqual([]);
});
