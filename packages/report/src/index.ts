export { inspectedIn } from "./inspectedIn.ts";
export { type ReportExtras, report } from "./report.ts";
export type { Inspected } from "./signedSection.ts";
export type { ReportedSweep } from "./sweepSection.ts";
export { type SheetExtras, teardownSheet } from "./teardownSheet.ts";
