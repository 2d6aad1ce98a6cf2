/** A fingerprint of what was put in, so that a report can be told from one about an edited rig. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { Rig } from "@secondline/rig";
import type { BreakTest, Lapse } from "@secondline/strength";

/** SHA-256 of the value as JSON with sorted keys, in hex; key order and spacing of the file do not matter. */
export function inputHash(value: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(sorted(value)))));
}

interface Hashed {
  readonly rig: Rig;
  readonly tests: readonly BreakTest[];
  readonly withholds: readonly string[];
  readonly lapses: readonly Lapse[];
}

/** Of an assessment, and of what its runs depend on: no run asks whether a value is confirmed, nor what has lapsed. */
export function assessmentHashes({ lapses, ...known }: Hashed): { readonly hash: string; readonly runsHash: string } {
  const hash = inputHash({ ...known, ...(lapses.length === 0 ? {} : { lapses }) });
  const { unconfirmed, ...ofRuns } = known.rig;
  const isSame = unconfirmed === undefined && lapses.length === 0;
  return { hash, runsHash: isSame ? hash : inputHash({ ...known, rig: ofRuns }) };
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, sorted(inner)]));
}
