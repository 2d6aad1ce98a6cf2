export type * from "./service.ts";
