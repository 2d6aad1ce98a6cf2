/** Values by key, in the order in which they were put; the newest so many stay. */
export class Newest<T> {
  readonly #most: number;
  readonly #byKey = new Map<string, T>();

  constructor(most: number) {
    this.#most = most;
  }

  /** A key that is there already counts as new. */
  put(key: string, value: T): void {
    this.#byKey.delete(key);
    this.#byKey.set(key, value);
    for (const oldest of [...this.#byKey.keys()].slice(0, -this.#most)) this.#byKey.delete(oldest);
  }

  get(key: string): T | undefined {
    return this.#byKey.get(key);
  }

  /** The oldest first. */
  values(): readonly T[] {
    return [...this.#byKey.values()];
  }
}
