export { type ReportExtras, report } from "./report.ts";
