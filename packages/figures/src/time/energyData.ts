import { type EnergyStack, indexAt } from "./energyBands.ts";
import type { PlotData } from "./plotDrawing.ts";
import type { TimeRange } from "./plotGrid.ts";

/** The edges between the layers over `range`, from the bottom up. */
export function energyData(stack: EnergyStack, range: TimeRange): PlotData {
  const first = indexAt(stack.times, range.from);
  const end = Math.min(indexAt(stack.times, range.to) + 2, stack.times.length);
  const part = (values: Float32Array | Float64Array) => Array.from(values.subarray(first, end));
  const bottom = stack.bands[0]?.bottom ?? new Float64Array(stack.times.length);
  const columns: PlotData["columns"] = [part(stack.times), part(bottom), ...stack.bands.map((band) => part(band.top))];
  return { columns, top: Math.max(stack.top * 1.06, 1) };
}
