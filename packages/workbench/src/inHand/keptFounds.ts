/** Verdicts of complete searches, kept for states that come back: an undo, a layout that is the rig in hand. */
import type { Found } from "@secondline/scenarios";

/** More states than anybody walks back and forth between; the longest unused make room. */
const KEPT = 20;

export class KeptFounds {
  private readonly byKey = new Map<string, Found>();

  /** `key`: `assessment.key` of the state. */
  keep(key: string, found: Found): void {
    this.byKey.delete(key);
    this.byKey.set(key, found);
    for (const oldest of [...this.byKey.keys()].slice(0, -KEPT)) this.byKey.delete(oldest);
  }

  recall(key: string): Found | undefined {
    const found = this.byKey.get(key);
    if (found) this.keep(key, found);
    return found;
  }
}
