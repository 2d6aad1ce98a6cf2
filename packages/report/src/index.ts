export { type ReportExtras, report } from "./report.ts";
export { type SiteCardExtras, siteCardPage } from "./siteCard.ts";
export { type SheetExtras, teardownSheet } from "./teardownSheet.ts";
