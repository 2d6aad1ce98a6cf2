export type { Accuracy, Recording } from "@secondline/engine";
export type { Basis, Rig } from "@secondline/rig";
export type * from "./outcome.ts";
