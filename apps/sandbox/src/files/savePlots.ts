/** Plots of a break log as files, with their cautions. Its code comes when it is asked for. */
import { type Palette, type Plot, plotsSvg } from "@secondline/figures";
import { plotsCsv } from "@secondline/figures/breakLog";
import { inputHash } from "@secondline/scenarios";
import { englishBreakLogWords } from "@secondline/words/breakLog";
import { sayFiles } from "@secondline/words/page/files";
import { fileName } from "@secondline/workbench";
import { footOf } from "@secondline/workbench/pictures";
import { download } from "../device/download.ts";
import { roomy } from "../picture/encode.ts";
import { words } from "../words.ts";

export interface PlotSource {
  readonly name: string;
  /** What the plots were made from; its hash is printed. */
  readonly input: unknown;
  readonly invented: boolean;
}

export function savePlots(
  plots: readonly Plot[],
  { name, input, invented }: PlotSource,
  kind: "svg" | "csv",
  palette: Palette,
): void {
  const { say } = englishBreakLogWords;
  const cautions = [
    say("figure.caution"),
    ...(invented ? [words.say("caution.invented")] : []),
    ...words.generalCautions(),
  ];
  const [only, second] = plots;
  const file =
    only !== undefined && second === undefined
      ? `${name} ${only.figure} ${only.of}`
      : sayFiles("savePlots.plots", { name });
  if (kind === "csv") {
    download(plotsCsv(plots, cautions), fileName(file, "csv"), "text/csv");
    return;
  }
  const title = say("figure.title", { name });
  const foot = footOf(inputHash(input), sayFiles("savePlots.breakLog"), new Date());
  download(plotsSvg(plots, { title, cautions, foot }, palette, roomy), fileName(file, "svg"), "image/svg+xml");
}
