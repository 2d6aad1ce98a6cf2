export type * from "./rig.ts";
