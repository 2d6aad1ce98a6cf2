/** The buffers of every typed array in a value, so that they can be handed to another thread instead of copied. */
export function buffersOf(value: unknown, found: Set<ArrayBuffer> = new Set()): Set<ArrayBuffer> {
  if (ArrayBuffer.isView(value)) {
    if (value.buffer instanceof ArrayBuffer) found.add(value.buffer);
  } else if (typeof value === "object" && value !== null) {
    for (const inner of Object.values(value)) buffersOf(inner, found);
  }
  return found;
}
