/** One comparer for all numbers that are checked: a tolerance, and the reason why it is what it is. */
import { expect } from "vitest";

/**
 * Expects `actual` within `share` of `expected`, relative; absolute when the expected value is 0.
 * `why` says why the tolerance is what it is, and is part of the message when it fails.
 */
export function close(actual: number, expected: number, share: number, why: string): void {
  const off = Math.abs(actual - expected) / (expected === 0 ? 1 : Math.abs(expected));
  expect(
    off,
    `${actual} against ${expected}: off by ${off.toPrecision(3)}, more than ${share} (${why})`,
  ).toBeLessThanOrEqual(share);
}
