/** Lists of issues that stay readable: the first of them in full, the others counted. */

/** Issues that are listed; more help nobody [-]. */
export const MOST_ISSUES = 100;

export interface Issues<T> {
  readonly issues: readonly T[];
  /** Number of further issues; absent when all are listed [-]. */
  readonly more?: number;
}

/** The first `most` issues and the number of the others. `unlisted`: others that were counted only. */
export function issuesListed<T>(issues: readonly T[], unlisted = 0, most = MOST_ISSUES): Issues<T> {
  const more = Math.max(0, issues.length - most) + unlisted;
  return more === 0 ? { issues } : { issues: issues.slice(0, most), more };
}
