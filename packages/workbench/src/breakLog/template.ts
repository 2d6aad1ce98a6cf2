/** A break log with nothing in it yet, to fill in a spreadsheet. */
import { LOG_COLUMNS } from "@secondline/strength";

/** Remarks that say what goes where, then the names; semicolons part nothing here, so that every spreadsheet opens it. */
export const logTemplate = (remarks: readonly string[]): string =>
  `${remarks.map((remark) => `# ${remark.replace(/[",\n]/g, " ")}\n`).join("")}${LOG_COLUMNS.join(",")}\n`;
