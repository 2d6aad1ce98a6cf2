/** Kinds of parts that neither time nor sun nor falls weaken: metal and trees. */
export const HARD_KINDS: ReadonlySet<unknown> = new Set(["bolt", "shackle", "tree"]);
