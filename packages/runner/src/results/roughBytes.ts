const BYTES_PER_OBJECT = 32;
const BYTES_PER_FIELD = 16;

/** Approximate memory of a value of plain data [bytes]; an object that occurs twice is counted twice. */
export function roughBytes(value: unknown): number {
  if (typeof value === "string") return BYTES_PER_FIELD + 2 * value.length;
  if (typeof value !== "object" || value === null) return BYTES_PER_FIELD;
  if (ArrayBuffer.isView(value)) return BYTES_PER_OBJECT + value.byteLength;
  return Object.values(value).reduce<number>((sum, inner) => sum + roughBytes(inner), BYTES_PER_OBJECT);
}
