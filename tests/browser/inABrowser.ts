/** What the projects of browser tests have in common. */
export const IN_A_BROWSER = {
  // One process for many files: they share browsers.
  isolate: false,
  // Bounds for a slow machine, not measurements: what is waited for comes in seconds.
  testTimeout: 180_000,
  hookTimeout: 120_000,
  expect: { poll: { timeout: 30_000 } },
};
