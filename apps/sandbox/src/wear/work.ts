/** What the wear view keeps: the record as written, the break log, and the few choices that belong to them. */

import type { BreakTest } from "@secondline/strength";
import { sayWear } from "@secondline/words/page/wear";
import breakLogText from "../../../../demo-data/break-log.csv?raw";
import recordText from "../../../../demo-data/old-rig-wear.json?raw";

/** An entry as written: strings keep what was typed, right or wrong. */
export type WrittenEntry = { readonly date: string; readonly event: string; readonly [key: string]: unknown };

export interface WrittenWebbing {
  readonly id: string;
  readonly name: string;
  readonly length: unknown;
  readonly mark: string;
  readonly made?: string;
  readonly entries: readonly WrittenEntry[];
}

export interface WrittenPart {
  readonly rig: string;
  readonly part: string;
  readonly made?: string;
  readonly entries: readonly WrittenEntry[];
}

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

export interface WearWork {
  readonly record: WrittenRecord;
  readonly log: BreakLog;
  /** Stock of a webbing that hangs in no rig at hand, by the webbing's id. */
  readonly stocks: Readonly<Record<string, string>>;
}

/** What is written to the device. */
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

export const EXAMPLE_RECORD = JSON.parse(recordText) as WrittenRecord;
export const EXAMPLE_LOG_TEXT = breakLogText;

export const NEW_RECORD: WrittenRecord = {
  secondline: "wear/1",
  name: sayWear("work.wearRecord"),
  webbings: [],
  parts: [],
};
export const NO_LOG: BreakLog = { name: sayWear("work.breakLog"), invented: false, tests: [] };

/** Remarks at the head of a log say whether its numbers are made up. */
export const saysInvented = (csv: string): boolean => /^\s*#[^\n]*\binvented\b/i.test(csv);
