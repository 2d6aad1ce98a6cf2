import type { Page } from "playwright-core";

/**
 * What a page in the pseudo-language shows or names that is not in it, and what of it is cut off. `own`: texts of the user, which stay
 * in the language they were written in.
 */
export function strayIn(page: Page, own: readonly string[]): Promise<readonly string[]> {
  return page.evaluate((own) => {
    /** Units, keys, marks and names that are the same in every language. */
    const SAME =
      /\b(?:k?N|k?J|k?g|kg|[cmk]?m|mm|m\/s|s|h|E|R|A|B|CFC|EN|OSHA|UIAA|ISO|CSV|JSON|SVG|PNG|AICc|Secondline|Space|Shift|Alt|Home|End)\b/g;
    const DAY = /\b\d{1,2}\. (?:\p{L}+\.? )?\d{4}\b/gu;
    const found = new Set<string>();

    function withoutOwn(text: string): string {
      let rest = text;
      for (const one of own) rest = rest.replaceAll(one, " ");
      return rest.replace(DAY, " ").replace(SAME, " ");
    }

    /** What is left of a text without its sentences. */
    function restOf(text: string): string {
      let rest = text;
      for (let inner = ""; inner !== rest; ) {
        inner = rest;
        rest = rest.replace(/⟦[^⟦⟧]*⟧/g, " ");
      }
      return withoutOwn(rest);
    }
    /** Words with a vowel as English writes it: values that were put into a sentence as they were. */
    const PLAIN = /\p{L}*[aeiou]\p{L}+/iu;
    /** A day as files have it. */
    const ISO_DAY = /\b\d{4}-\d{2}-\d{2}\b/;
    const isStray = (text: string) =>
      /[⟦⟧]|\p{L}{2}/u.test(restOf(text)) || PLAIN.test(withoutOwn(text)) || ISO_DAY.test(withoutOwn(text));
    const isSeen = (element: Element) => element.checkVisibility({ visibilityProperty: true, opacityProperty: true });
    const told = (element: Element) => {
      const at = element.closest("[aria-label], [id], [class]");
      return `${element.tagName.toLowerCase()}.${at?.getAttribute("class") ?? ""}`.slice(0, 60);
    };

    /** What is wider than its place can be scrolled to. */
    function hasScroller(element: Element): boolean {
      for (let at: Element | null = element; at; at = at.parentElement)
        if (/auto|scroll/.test(getComputedStyle(at).overflowX) && at.scrollWidth > at.clientWidth + 1) return true;
      return false;
    }

    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement!;
      const text = node.textContent ?? "";
      if (element.closest("script, style, noscript") || !isSeen(element)) continue;
      // A label of a drawing stands in several lines, or is shortened to its room.
      const drawn = element.closest("svg") !== null;
      if (drawn && /…$/.test(text) && own.some((one) => one.startsWith(text.slice(0, -1)))) continue;
      if (drawn ? PLAIN.test(withoutOwn(text)) || ISO_DAY.test(text) : isStray(text))
        found.add(`says "${text.trim()}" (${told(element)})`);
    }
    for (const element of document.body.querySelectorAll("*")) {
      if (!isSeen(element)) continue;
      for (const name of ["aria-label", "title", "placeholder", "alt", "aria-description", "aria-valuetext"]) {
        const text = element.getAttribute(name);
        if (text && isStray(text)) found.add(`${name} "${text}" (${told(element)})`);
      }
    }
    for (const element of document.body.querySelectorAll<HTMLElement>(
      "button, label, p, td, th, li, span, dt, dd, h2, h3",
    )) {
      const { left, right, width } = element.getBoundingClientRect();
      if (width === 0 || !isSeen(element) || element.closest(".visually-hidden, [inert]")) continue;
      if (left < innerWidth && right > innerWidth + 1 && !hasScroller(element))
        found.add(`runs out of the window: "${element.textContent}" (${told(element)})`);
    }
    if (document.documentElement.scrollWidth > innerWidth) found.add("is wider than the window");
    const CONTROLS = "button, a, label, legend, th, h1, h2, h3, h4, dt, [role=tab], [role=combobox], [role=menuitem]";
    for (const element of document.body.querySelectorAll<HTMLElement>(CONTROLS)) {
      if (!isSeen(element) || element.closest(".visually-hidden")) continue;
      const { overflowX } = getComputedStyle(element);
      // A name of the user's may be as long as they like; it is told as a whole by its title.
      const isOwn = own.includes(element.title);
      if (!isOwn && /hidden|clip/.test(overflowX) && element.scrollWidth > element.clientWidth + 1)
        found.add(`cuts off "${element.textContent}" (${told(element)})`);
      const around = element.parentElement!;
      const [inner, outer] = [element, around].map((one) => one.getBoundingClientRect()) as [DOMRect, DOMRect];
      if (getComputedStyle(around).display === "flex" && outer.width > 0 && inner.right > outer.right + 1)
        found.add(`has no room for "${element.textContent}" (${told(around)})`);
    }
    return [...found];
  }, own);
}
