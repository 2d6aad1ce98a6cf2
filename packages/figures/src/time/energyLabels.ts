/** Words beside the energy over time. */
import { listed, quantity } from "@secondline/words";
import type { Palette } from "../palette.ts";
import type { EndLabel } from "./endLabel.ts";
import { type Band, type EnergyStack, indexAt } from "./energyBands.ts";
import { type PlotFrame, yOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";

/** Names beside the middles of the layers at the right edge, the stack's top layer on top. */
export function bandLabels(
  stack: EnergyStack,
  range: TimeRange,
  frame: PlotFrame,
  top: number,
  palette: Palette,
  compact: boolean,
): readonly EndLabel[] {
  const last = indexAt(stack.times, range.to);
  return [...stack.bands].reverse().map((band) => ({
    key: band.key,
    name: compact ? band.shortName : band.name,
    // Words need more contrast than areas do.
    colour: palette[band.colour === "ghost" ? "softInk" : band.colour],
    dash: null,
    fill: `${palette[band.colour]}${band.kind === "height" ? "14" : band.kind === "lost" ? "90" : "38"}`,
    width: 1,
    y: yOf((band.bottom[last]! + band.top[last]!) / 2, top, frame),
    rank: band.most,
    valueAt: (time) => valueAt(stack, band, time),
  }));
}

function valueAt(stack: EnergyStack, band: Band, time: number): number | null {
  return band.values[indexAt(stack.times, time)] ?? null;
}

/** The energies at a time, in words. */
export function energyWordsAt(stack: EnergyStack, time: number): string {
  const at = indexAt(stack.times, time);
  const parts = [...stack.bands].reverse().map((band) => `${band.name} ${quantity.energy(band.values[at]!)}`);
  return listed([quantity.seconds(time, 3), ...parts]);
}

/** The axis has kJ, with no more digits than its steps need. */
export function axisKilojoules(energy: number): string {
  return `${quantity.number(Number((energy / 1000).toFixed(2)))}\u00a0kJ`;
}
