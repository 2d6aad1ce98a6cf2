/** What is wrong in a file, in words and line by line. */

import type { Issues, RigIssue } from "@secondline/rig";
import { moreText } from "@secondline/words/more";
import { sayFiles } from "@secondline/words/page/files";

export function wrongInIt({ issues, more = 0 }: Issues<RigIssue>): string {
  const count = issues.length + more;
  return sayFiles("issueLines.thingsWrong", { count });
}

/** One line per issue, with its path; the last line counts those that are not listed. */
export function issueLines({ issues, more = 0 }: Issues<RigIssue>): string[] {
  const lines = issues.map(({ path, message }) => (path === "" ? message : `${path}: ${message}`));
  return more === 0 ? lines : [...lines, moreText(more)];
}
