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

/** A table with a caption; columns named in `numbers` are set right-aligned with tabular figures. */
export function tableOf(
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly Content[])[],
  numbers: readonly number[] = [],
): Html {
  const kind = (column: number): Record<string, string> => (numbers.includes(column) ? { class: "number" } : {});
  return tag("table", [
    tag("caption", caption),
    tag(
      "thead",
      tag(
        "tr",
        heads.map((head, c) => tag("th", head, { scope: "col", ...kind(c) })),
      ),
    ),
    tag(
      "tbody",
      rows.map((row) =>
        tag(
          "tr",
          row.map((cell, c) => tag("td", cell, kind(c))),
        ),
      ),
    ),
  ]);
}
