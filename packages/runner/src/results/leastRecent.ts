/** Values in memory, bounded in bytes: the value used longest ago goes first. */
import { roughBytes } from "./roughBytes.ts";

export class LeastRecent<T> {
  readonly #mostBytes: number;
  readonly #kept = new Map<string, { readonly value: T; readonly bytes: number }>();
  #bytes = 0;

  constructor(mostBytes: number) {
    this.#mostBytes = mostBytes;
  }

  get size(): number {
    return this.#kept.size;
  }

  get bytes(): number {
    return this.#bytes;
  }

  get(key: string): T | undefined {
    const entry = this.#kept.get(key);
    if (!entry) return undefined;
    this.#kept.delete(key);
    this.#kept.set(key, entry);
    return entry.value;
  }

  /** A value that is larger than all of the room is not kept. */
  put(key: string, value: T): void {
    const bytes = roughBytes(value);
    this.#remove(key);
    if (bytes > this.#mostBytes) return;
    this.#kept.set(key, { value, bytes });
    this.#bytes += bytes;
    for (const oldest of this.#kept.keys()) {
      if (this.#bytes <= this.#mostBytes) break;
      this.#remove(oldest);
    }
  }

  #remove(key: string): void {
    this.#bytes -= this.#kept.get(key)?.bytes ?? 0;
    this.#kept.delete(key);
  }
}
