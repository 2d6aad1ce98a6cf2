/** Words of earlier files that are written differently now, by the old word. A file that still has one is told the new one. */
export const RETIRED_WORDS: ReadonlyMap<string, string> = new Map([["clampTrace", "clampMark"]]);
