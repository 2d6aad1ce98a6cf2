export { faceRule, HOUSE_FACES, type HouseFace } from "./faces.ts";
export { inspectedIn } from "./inspectedIn.ts";
export { type ReportExtras, report } from "./report.ts";
export type { Inspected } from "./signedSection.ts";
export { siteCardPage } from "./siteCard.ts";
export type { ReportedSweep } from "./sweepSection.ts";
export { teardownSheet } from "./teardownSheet.ts";
