/** Sentences of the terminal on a file without faults, and on a file that is not ours. No page loads it. */
export const VALIDATE_ENGLISH = {
  unknown:
    '{file}: this is JSON, but none of ours. Expected a rig ("secondline": "rig/1"), a wear record, or a problem (with span, main, leash …).',
  rig: '{file}: a rig, "{name}"; no fault in the document. Whether the rig holds, check tells.',
  problem: '{file}: a problem, "{name}"; no fault found.',
  wear: "{file}: a wear record; no fault found.",
  breakLog: "{file}: a break log of {count} tests; no fault found.",
} as const;
