/** Figures of a page as one SVG file, with their captions and the cautions. Its code comes when it is asked for. */

import { inputHash } from "@secondline/scenarios";
import { sayFiles } from "@secondline/words/page/files";
import { footOf } from "@secondline/workbench/pictures";
import { PALETTES, type Theme } from "../design/palette.ts";
import { type Figure, figuresBody } from "../picture/figures.ts";
import { words } from "../words.ts";
import { savePicture } from "./savePicture.ts";

export interface FigurePage {
  readonly title: string;
  /** What the figures were made from; its hash is printed. */
  readonly input: unknown;
  readonly invented: boolean;
  /** Which state they are of, such as the day of the record. */
  readonly state?: string;
  readonly cautions?: readonly string[];
}

/** Every `figure` inside of `page` that is an SVG drawing. */
export async function saveFigures(
  page: ParentNode,
  { title, input, invented, state, cautions = words.generalCautions() }: FigurePage,
): Promise<void> {
  const figures = [...page.querySelectorAll("figure")];
  const drawn = figures.flatMap((figure): Figure[] => {
    const drawing = tallest(figure.querySelectorAll<SVGSVGElement>("svg[viewBox]"));
    return drawing ? [{ drawing, title: titleOf(figure) }] : [];
  });
  if (drawn.length === 0) throw new Error(sayFiles("saveFigures.none"));
  const captions = figures.flatMap((figure) => figure.querySelector("figcaption")?.textContent?.trim() || []);
  const made = words.say("caution.invented");
  const said = invented && !cautions.includes(made) ? [...cautions, made] : cautions;
  const theme: Theme = document.documentElement.dataset.theme === "dark" ? "dark" : "light";
  await savePicture(
    {
      words: {
        title,
        lines: [...(state === undefined ? [] : [state]), ...captions],
        cautions: said,
        foot: footOf(inputHash(input), sayFiles("saveFigures.wearRecord"), new Date()),
      },
      palette: PALETTES[theme],
      body: figuresBody(drawn, PALETTES[theme].ink),
    },
    "svg",
    sayFiles("saveFigures.figures", { title }),
  );
}

/** The figure proper; smaller drawings beside it are its controls. */
function tallest(drawings: Iterable<SVGSVGElement>): SVGSVGElement | undefined {
  return [...drawings].sort((a, b) => b.clientHeight - a.clientHeight)[0];
}

/** The heading of the part of the page that the figure stands in. */
function titleOf(figure: Element): string | undefined {
  const heading = figure.closest("section")?.querySelector("h3, h4");
  return heading?.textContent?.trim() || undefined;
}
