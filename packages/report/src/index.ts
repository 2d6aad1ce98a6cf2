export { type ReportExtras, report } from "./report.ts";
export { teardownSheet } from "./teardownSheet.ts";
