import type { Plugin } from "rolldown";

/** Puts the house's faces beside the bundled command line. */
export function facesPlugin(): Plugin;
