/** Places of the results of a sample on probability paper. */
import { type Observation, observationPlace } from "./observation.ts";

/**
 * Share of parts that lie below each result, in the order of the sample [-]: Herd and Johnson's positions, for complete samples
 * i ÷ (n + 1). A survivor gets the share reached by the pieces that broke before it; an interval counts at its middle. The
 * positions are for the eye only: fits use the results themselves. Nelson, *Applied Life Data Analysis*, 1982, ch. 4.
 */
export function plottingPositions(sample: readonly Observation[]): number[] {
  const order = sample.map((_, i) => i).sort((a, b) => byPlace(sample[a]!, sample[b]!));
  const positions = new Array<number>(sample.length).fill(0);
  let surviving = 1;
  order.forEach((index, i) => {
    const left = sample.length - i;
    if (sample[index]!.kind !== "above") surviving *= left / (left + 1);
    positions[index] = 1 - surviving;
  });
  return positions;
}

/** At the same load, pieces that broke come before pieces that held it. */
const byPlace = (a: Observation, b: Observation): number =>
  observationPlace(a) - observationPlace(b) || Number(a.kind === "above") - Number(b.kind === "above");
