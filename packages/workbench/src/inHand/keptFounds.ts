/** Verdicts of complete searches, kept for states that come back: an undo, a layout that is the open rig. */
import type { SearchResult } from "@secondline/scenarios";
import { Newest } from "../newest.ts";

/** More states than anybody walks back and forth between; the longest unused make room. */
const MOST_KEPT_STATES = 20;

export class KeptFounds {
  readonly #founds = new Newest<SearchResult>(MOST_KEPT_STATES);

  /** `key`: `assessment.key` of the state. */
  keep(key: string, found: SearchResult): void {
    this.#founds.put(key, found);
  }

  recall(key: string): SearchResult | undefined {
    const found = this.#founds.get(key);
    if (found) this.keep(key, found);
    return found;
  }
}
