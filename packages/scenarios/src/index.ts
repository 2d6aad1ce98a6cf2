export type * from "./outcome.ts";
