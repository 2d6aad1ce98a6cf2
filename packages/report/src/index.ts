export { type ReportExtras, report } from "./report.ts";
export { siteCardPage } from "./siteCard.ts";
export { teardownSheet } from "./teardownSheet.ts";
