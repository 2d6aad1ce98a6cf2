/** A fingerprint of what was put in, so that a report can be told from one about an edited rig. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { Rig } from "@secondline/rig";
import type { BreakTest } from "@secondline/strength";

/** SHA-256 of the value as JSON with sorted keys, in hex; key order and spacing of the file do not matter. */
export function inputHash(value: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(sorted(value)))));
}

/** Of an assessment, and of what its runs depend on: no run asks whether a value is confirmed. */
export function assessmentHashes(
  rig: Rig,
  tests: readonly BreakTest[],
  withholds: readonly string[],
): { readonly hash: string; readonly runsHash: string } {
  const hash = inputHash({ rig, tests, withholds });
  const { unconfirmed, ...ofRuns } = rig;
  return { hash, runsHash: unconfirmed === undefined ? hash : inputHash({ rig: ofRuns, tests, withholds }) };
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, sorted(inner)]));
}
