import type { RecordIssue } from "./wearStore.ts";

/** Messages of a field and of what lies under it. */
export const messagesUnder = (issues: readonly RecordIssue[], path: string): string[] =>
  issues
    .filter((issue) => issue.path === path || issue.path.startsWith(`${path}[`) || issue.path.startsWith(`${path}.`))
    .map(({ message }) => message);
