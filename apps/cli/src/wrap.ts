/** Breaks text into lines of at most `columns`; a longer word gets a line of its own. */
export function wrap(text: string, columns: number): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    if (line !== "" && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  if (line !== "") lines.push(line);
  return lines.join("\n");
}

/** The same, every line but the first begun with `indent`. */
export function wrapHanging(text: string, columns: number, indent: string): string {
  return wrap(text, columns - indent.length)
    .split("\n")
    .join(`\n${indent}`);
}

/** A list with a dot before every item. */
export const bullets = (items: readonly string[], columns: number): string[] =>
  items.map((item) => `  · ${wrapHanging(item, columns, "    ")}`);
