export { bandLabel, stayBar } from "./calendarLabels.ts";
export { spanDimension } from "./spanDimension.ts";
export { shortfall, strengthPath } from "./strengthCurve.ts";
