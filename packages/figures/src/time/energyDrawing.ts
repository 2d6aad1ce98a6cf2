import type { Palette } from "../palette.ts";
import type { BandKind, EnergyStack } from "./energyBands.ts";
import type { PlotDrawing, PlotSeries } from "./plotDrawing.ts";

/**
 * Series are the edges between the bands, from the bottom up; every band is filled down to the edge below it. `fillOf`: tints and patterns
 * of the medium.
 */
export function energyDrawing<Fill>(
  stack: EnergyStack,
  palette: Palette,
  fillOf: (kind: BandKind, colour: string) => Fill,
): PlotDrawing<Fill> {
  const edges = [null, ...stack.bands].map(
    (band): PlotSeries => ({
      stroke: band === null ? "transparent" : palette[band.kind === "height" ? "softInk" : band.colour],
      width: band === null ? 0 : 1,
      dash: [],
      alpha: 1,
    }),
  );
  const bands = stack.bands.map((band, i) => ({
    series: [i + 2, i + 1] as const,
    fill: fillOf(band.kind, palette[band.colour]),
  }));
  return { series: edges, bands };
}
