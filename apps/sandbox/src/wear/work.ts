/** What a wear view begins with: the examples, or nothing. */
import type { BreakLog, WrittenRecord } from "@secondline/workbench";
import breakLogText from "../../../../demo-data/break-log.csv?raw";
import recordText from "../../../../demo-data/old-rig-wear.json?raw";

export const EXAMPLE_RECORD = JSON.parse(recordText) as WrittenRecord;
export const EXAMPLE_LOG_TEXT = breakLogText;

export const NEW_RECORD: WrittenRecord = { secondline: "wear/1", name: "Wear record", webbings: [], parts: [] };
export const NO_LOG: BreakLog = { name: "Break log", invented: false, tests: [] };

/** Remarks at the head of a log say whether its numbers are made up. */
export const saysInvented = (csv: string): boolean => /^\s*#[^\n]*\binvented\b/i.test(csv);
