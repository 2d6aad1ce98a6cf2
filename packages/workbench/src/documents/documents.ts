/** What a user makes and keeps, as written: strings keep what was typed, right or wrong. All documents have one order of undo. */
import type { BreakTest } from "@secondline/strength";

/** A rig: plain JSON. */
export type WrittenRig = { readonly [key: string]: unknown };

export type WrittenEntry = { readonly date: string; readonly event: string; readonly [key: string]: unknown };

export interface WrittenWebbing {
  readonly id: string;
  readonly name: string;
  readonly length: unknown;
  readonly mark: string;
  readonly made?: string;
  readonly firstUse?: string;
  readonly entries: readonly WrittenEntry[];
}

export interface WrittenPart {
  readonly rig: string;
  readonly part: string;
  readonly made?: string;
  readonly firstUse?: string;
  readonly entries: readonly WrittenEntry[];
}

/** A wear record. */
export interface WrittenRecord {
  readonly secondline: "wear/1";
  readonly name: string;
  readonly invented?: boolean;
  readonly webbings?: readonly WrittenWebbing[];
  readonly parts?: readonly WrittenPart[];
  readonly [key: string]: unknown;
}

export interface BreakLog {
  readonly name: string;
  readonly invented: boolean;
  readonly tests: readonly BreakTest[];
}

/** A record, a log, and the few choices that belong to them. */
export interface WearWork {
  readonly record: WrittenRecord;
  readonly log: BreakLog;
  /** Stock of a webbing that hangs in no rig at hand, by the webbing's id. */
  readonly stocks: Readonly<Record<string, string>>;
}

/** The rig, and what is known of its wear once that was looked at. */
export interface Documents extends Partial<WearWork> {
  readonly rig: WrittenRig;
}

/** The document that a step back or forward is told to belong to. */
export type DocumentName = "rig" | "record" | "log";

/** Choices of a record count as the record. A step that changed more than one document is told by the first of these documents. */
export function documentNameOf(changed: readonly (keyof Documents)[]): DocumentName {
  if (changed.includes("rig")) return "rig";
  return changed.every((name) => name === "log") ? "log" : "record";
}

/** Records and logs as they are kept on the device. */
export interface KeptWear {
  readonly work: WearWork;
  /** Records and logs that were replaced, newest first. */
  readonly earlier: readonly EarlierWear[];
}

export interface EarlierWear {
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly replaced: number;
  readonly work: WearWork;
}
