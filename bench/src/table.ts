/** A table in plain text: first column to the left, the others to the right. */
export function table(title: string, head: readonly string[], rows: readonly (readonly string[])[]): string {
  const width = head.map((cell, k) => Math.max(cell.length, ...rows.map((row) => row[k]!.length)));
  const line = (row: readonly string[]) =>
    row.map((cell, k) => (k === 0 ? cell.padEnd(width[k]!) : cell.padStart(width[k]!))).join("  ");
  const rule = width.map((count) => "─".repeat(count)).join("  ");
  return [`\n${title}`, line(head), rule, ...rows.map(line)].join("\n");
}
