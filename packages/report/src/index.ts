export { type ReportExtras, report } from "./report.ts";
export { type SheetExtras, teardownSheet } from "./teardownSheet.ts";
