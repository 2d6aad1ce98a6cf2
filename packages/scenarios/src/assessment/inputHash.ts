/** A fingerprint of what was put in, so that a report can be told from one about an edited rig. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { Fact, Rig } from "@secondline/rig";
import type { BreakTest, Lapse } from "@secondline/strength";

/** SHA-256 of the value as JSON with sorted keys, in hex; key order and spacing of the file do not matter. */
export function inputHash(value: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(sortedJson(value) ?? "null")));
}

interface Hashed {
  readonly rig: Rig;
  readonly tests: readonly BreakTest[];
  readonly withholds: readonly Fact[];
  readonly lapses: readonly Lapse[];
}

/** The hash of an assessment, and the hash of what its runs depend on. No run asks whether a value is confirmed or what has lapsed. */
export function assessmentHashes({ rig, tests, withholds, lapses }: Hashed): {
  readonly hash: string;
  readonly runsHash: string;
} {
  // Once for both: a log may be long.
  const log = tests.length === 0 ? tests : inputHash(tests);
  const { unconfirmed, ...ofRuns } = rig;
  const runsHash = inputHash({ rig: ofRuns, tests: log, withholds });
  const isSame = unconfirmed === undefined && lapses.length === 0;
  return { hash: isSame ? runsHash : inputHash({ rig, tests: log, withholds, lapses }), runsHash };
}

/** JSON with sorted keys, made without a copy of the value: a break log may have thousands of tests. Undefined for what JSON leaves out. */
function sortedJson(value: unknown): string | undefined {
  if (Array.isArray(value)) return `[${value.map((inner) => sortedJson(inner) ?? "null").join()}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const members: string[] = [];
  // The places of a typed array stay in their order.
  const keys = ArrayBuffer.isView(value) ? Object.keys(value) : Object.keys(value).sort();
  for (const key of keys) {
    const inner = sortedJson((value as Readonly<Record<string, unknown>>)[key]);
    if (inner !== undefined) members.push(`${JSON.stringify(key)}:${inner}`);
  }
  return `{${members.join()}}`;
}
