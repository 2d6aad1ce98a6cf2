import type { Swept, WhatIf } from "@secondline/scenarios";

/** What governs at the values, or at those of the curve that are nearest to them. */
export function governingAt({ points, knobs, events }: Swept, at: readonly number[]): WhatIf {
  const far = (values: readonly number[]) =>
    values.reduce((sum, value, k) => sum + ((value - at[k]!) / (knobs[k]!.to - knobs[k]!.from)) ** 2, 0);
  const [nearest] = points.filter(({ curve }) => curve).sort((a, b) => far(a.values) - far(b.values));
  return (nearest?.curve ?? events[0]!).event;
}
