/** A page in any browser, driven as a user drives it: found by role and name, clicked, typed into, read. */
import type { ElementHandle } from "playwright-core";
import { type App, WIDE } from "../browser/app.ts";
import { until } from "./until.ts";
import type { Handle, WebDriver } from "./webDriver.ts";

export type Role = "button" | "menuitem" | "textbox" | "checkbox" | "combobox" | "option";

/** Serialisable, for functions that run in the page. */
type Plain = string | number | boolean | null | undefined | readonly Plain[] | { readonly [key: string]: Plain };

export interface Driven {
  /** What a function of its own finds in the page; it sees nothing but its argument and the page. */
  ask<T, A extends Plain>(look: (argument: A) => T, argument: A): Promise<T>;
  /** Waits for the element and clicks on it. `nth`: which, where several have the name. */
  click(role: Role, name: string, nth?: number): Promise<void>;
  /** Clicks into a field and types over what it holds. */
  type(field: string, text: string): Promise<void>;
  /** What the browser itself has complained of. */
  complaints(): Promise<readonly string[]>;
}

interface Target {
  readonly role: Role;
  readonly name: string;
  readonly nth: number;
}

/**
 * Runs in the page. The element in sight of that role and name, or that whose name begins so; null: not there, or not to be used yet.
 * A dot stands before the words of the option that is chosen.
 */
function find({ role, name, nth }: Target): HTMLElement | null {
  const plain = (text: string | null | undefined) => (text ?? "").replace(/^●|\s+/g, " ").trim();
  function nameOf(one: HTMLElement): string {
    const by = one.getAttribute("aria-labelledby");
    const label = one.getAttribute("aria-label");
    if (label) return plain(label);
    if (by)
      return plain(
        by
          .split(" ")
          .map((id) => document.getElementById(id)?.textContent ?? "")
          .join(" "),
      );
    if (one instanceof HTMLInputElement) return plain(one.labels?.[0]?.textContent);
    return plain((role === "checkbox" ? one.closest("label") : one)?.textContent);
  }
  const own =
    role === "button" ? "button:not([role])," : role === "textbox" ? "input:not([type]), input[type=text]," : "";
  const seen = [...document.querySelectorAll<HTMLElement>(`${own}[role=${role}]`)].filter(
    (one) =>
      one.checkVisibility({ visibilityProperty: true }) && !one.closest("[inert], [aria-hidden=true], :disabled"),
  );
  const exact = seen.filter((one) => nameOf(one) === name);
  return (exact.length > 0 ? exact : seen.filter((one) => nameOf(one).startsWith(name)))[nth] ?? null;
}

/** Chromium, flat, by playwright as in the other tests. */
export async function inChromium(app: App): Promise<Driven> {
  const { page, problems } = await app.visit({ first: true, viewport: WIDE });
  const found = (role: Role, name: string, nth = 0): Promise<ElementHandle<HTMLElement>> =>
    until(`${role} "${name}"`, async () => {
      const handle = await page.evaluateHandle(find, { role, name, nth });
      return (handle.asElement() as ElementHandle<HTMLElement> | null) ?? undefined;
    });
  return {
    ask: (look, argument) => page.evaluate(look as never, argument),
    click: async (role, name, nth) => (await found(role, name, nth)).click(),
    async type(field, text) {
      await (await found("textbox", field)).click();
      await page.keyboard.press("Control+A");
      await page.keyboard.type(text);
    },
    complaints: async () => problems,
  };
}

/** Where an element stands; undefined: it has gone meanwhile. */
async function placeOf(driver: WebDriver, element: Handle): Promise<string | undefined> {
  const script =
    "const { x, y, width, height } = arguments[0].getBoundingClientRect(); return [x, y, width, height].join();";
  return (await driver.execute(script, [element]).catch(() => undefined)) as string | undefined;
}

/** The control key, held down until a command has typed all its keys. */
const CONTROL = "\uE009";

/** Any browser with a driver. */
export async function driven(driver: WebDriver, url: string): Promise<Driven> {
  const ask = <T, A extends Plain>(look: (argument: A) => T, argument: A): Promise<T> =>
    driver.execute(`return (${look.toString()}).apply(null, arguments)`, [argument]) as Promise<T>;
  /** The element when it has come to rest: a click on something that moves may land beside it. */
  function found(role: Role, name: string, nth = 0): Promise<Handle> {
    let before: string | undefined;
    return until(`${role} "${name}"`, async () => {
      const element = (await ask(find, { role, name, nth })) as unknown as Handle | null;
      const place = element ? await placeOf(driver, element) : undefined;
      const isStill = place !== undefined && place === before;
      before = place;
      return isStill ? element! : undefined;
    });
  }
  await driver.navigate(url);
  return {
    ask,
    click: async (role, name, nth) => driver.click(await found(role, name, nth)),
    async type(field, text) {
      const element = await found("textbox", field);
      await driver.click(element);
      await driver.sendKeys(element, `${CONTROL}a`);
      await driver.sendKeys(element, text);
    },
    complaints: () => driver.complaints(url),
  };
}
