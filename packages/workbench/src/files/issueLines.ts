/** What is wrong in a file, in words and line by line. */

import type { Issues } from "@secondline/rig";
import type { AssessmentIssue } from "@secondline/scenarios";
import { tellFault } from "@secondline/words/faults";
import { moreText } from "@secondline/words/more";
import { sayFiles } from "@secondline/words/page/files";

export function wrongInIt({ issues, more = 0 }: Issues<AssessmentIssue>): string {
  const count = issues.length + more;
  return sayFiles("issueLines.thingsWrong", { count });
}

/** One line per issue, with its path; the last line counts those that are not listed. */
export function issueLines({ issues, more = 0 }: Issues<AssessmentIssue>): string[] {
  const lines = issues.map(({ path, message }) => {
    const told = tellFault(message);
    return path === "" ? told : `${path}: ${told}`;
  });
  return more === 0 ? lines : [...lines, moreText(more)];
}
