import fc from "fast-check";
import { expect, it } from "vitest";
import { mutatedFile, readOrRefused } from "../../apps/cli/test/support/mutatedFiles.ts";

it("every one of 20,000 changed files is read, or refused in words", () => {
  const seen = { read: 0, refused: 0 };
  fc.assert(
    fc.property(mutatedFile, (file) => {
      seen[readOrRefused(file)]++;
    }),
    { seed: 20_261_130, numRuns: 20_000 },
  );
  expect(seen.read).toBeGreaterThan(400);
});
