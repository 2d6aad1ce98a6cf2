/** HTML as text, with everything that comes from a document escaped. */

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => ENTITIES[sign]!);
}

/** Text that is HTML already. */
export interface Html {
  readonly html: string;
}
export type Content = string | Html | readonly Content[];

export const raw = (html: string): Html => ({ html });

function text(content: Content): string {
  if (typeof content === "string") return escapeHtml(content);
  return "html" in content ? content.html : content.map(text).join("");
}

/** An element: `tag("td", "a < b", { class: "number" })`. */
export function tag(name: string, content: Content, attributes: Readonly<Record<string, string>> = {}): Html {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escapeHtml(value)}"`);
  return raw(`<${name}${written.join("")}>${text(content)}</${name}>`);
}

/** A list with a dot before every item. */
export const listOf = (items: readonly string[], kind?: string): Html =>
  tag(
    "ul",
    items.map((item) => tag("li", item)),
    kind === undefined ? {} : { class: kind },
  );

/**
 * A table with a caption, if there is one, and heads, if there are any; without heads the first column holds the names. Columns
 * named in `numbers` are set right-aligned with tabular figures.
 */
export function tableOf(
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly Content[])[],
  numbers: readonly number[] = [],
  name?: string,
): Html {
  const kind = (column: number): Record<string, string> => (numbers.includes(column) ? { class: "number" } : {});
  const cells = (row: readonly Content[]): Html[] =>
    row.map((cell, c) =>
      heads.length === 0 && c === 0 ? tag("th", cell, { scope: "row" }) : tag("td", cell, kind(c)),
    );
  const head = tag(
    "tr",
    heads.map((text, c) => tag("th", text, { scope: "col", ...kind(c) })),
  );
  return tag(
    "table",
    [
      ...(caption === "" ? [] : [tag("caption", caption)]),
      ...(heads.length === 0 ? [] : [tag("thead", head)]),
      tag(
        "tbody",
        rows.map((row) => tag("tr", cells(row))),
      ),
    ],
    name === undefined ? {} : { class: name },
  );
}
