/** A basis as it is written: its kind, a colon, and the source in words. */
import type { Basis, BasisKind } from "./rig.ts";

export const BASIS_KINDS: readonly BasisKind[] = ["published", "tested", "common practice", "from memory", "assumed"];
const BASIS_TEXT = new RegExp(`^\\s*(${BASIS_KINDS.join("|")}): *(\\S[\\s\\S]*)$`);

/** Pattern of a written basis, for the published schema. */
export const BASIS_PATTERN = BASIS_TEXT.source;

const NOT_GIVEN: Basis = { kind: "assumed", note: "no basis given in the rig file" };

/** Reads a basis; undefined when it is not written as one. */
export function parseBasis(text: string): Basis | undefined {
  const match = BASIS_TEXT.exec(text);
  return match ? { kind: match[1] as BasisKind, note: match[2]!.trim() } : undefined;
}

/** The basis of a number whose basis may have been left out: then it counts as assumed, and says so. */
export function readBasis(text: string | undefined): Basis {
  return (text === undefined ? undefined : parseBasis(text)) ?? NOT_GIVEN;
}
