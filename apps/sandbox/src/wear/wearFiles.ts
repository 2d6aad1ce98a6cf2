/** Wear records and break logs to files. */
import { templateRemarks } from "@secondline/words/columns";
import { type BreakLog, fileName, logTemplate, type WrittenRecord } from "@secondline/workbench";
import { logText } from "@secondline/workbench/record";
import { download } from "../device/download.ts";

export function saveRecord(record: WrittenRecord): void {
  download(`${JSON.stringify(record, null, 2)}\n`, fileName(record.name, "json"), "application/json");
}

export function saveLog(log: BreakLog): void {
  download(logText(log), fileName(log.name, "csv"), "text/csv");
}

/** An empty log, to fill in any spreadsheet. */
export const saveTemplate = (): void => download(logTemplate(templateRemarks()), "break-log-template.csv", "text/csv");
