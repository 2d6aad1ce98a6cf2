export type * from "./problem.ts";
export type * from "./recording.ts";
export { LEDGER, SIGNALS } from "./recording.ts";
