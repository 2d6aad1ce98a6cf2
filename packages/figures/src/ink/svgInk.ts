/** An ink that writes an SVG document. It has those methods of a canvas that our drawings use. */
import type { Ink } from "./ink.ts";
import { escapeXml, Path, paintOf, pathNumber } from "./svgPath.ts";

export interface SvgInk extends Ink {
  /** Puts in ready-made SVG: another drawing, with its own size. */
  readonly insert: (markup: string) => void;
  /** The whole document, of the given size [px] and spoken name. */
  readonly document: (width: number, height: number, title: string) => string;
}

/** The state that `save` keeps. */
interface Kept {
  readonly values: Readonly<Record<(typeof KEPT_SETTINGS)[number], unknown>>;
  readonly dash: readonly number[];
  readonly groups: number;
  readonly place: Path["place"];
}
const KEPT_SETTINGS = [
  "fillStyle",
  "strokeStyle",
  "lineWidth",
  "lineCap",
  "lineJoin",
  "lineDashOffset",
  "globalAlpha",
  "font",
  "textAlign",
] as const;

/**
 * `measure`: width of a text set in a CSS font [px]. `name`: letters before every name inside of the document, so that several can
 * stand in one page.
 */
export function createSvgInk(measure: (text: string, font: string) => number, name = ""): SvgInk {
  const body: string[] = [];
  const defs: string[] = [];
  const stack: Kept[] = [];
  const path = new Path();
  let dash: readonly number[] = [];
  let groups = 0;

  const fillOf = (): string => {
    const style: unknown = ink.fillStyle;
    if (style instanceof Gradient) return `fill="url(#${style.id(defs, name)})"${opacity("fill", ink.globalAlpha)}`;
    return paintOf("fill", String(style), ink.globalAlpha);
  };
  const dashOf = () => {
    if (dash.length === 0) return "";
    const offset = ink.lineDashOffset === 0 ? "" : ` stroke-dashoffset="${pathNumber(ink.lineDashOffset)}"`;
    return ` stroke-dasharray="${dash.map(pathNumber).join(" ")}"${offset}`;
  };

  const ink: SvgInk = {
    fillStyle: "#000000",
    strokeStyle: "#000000",
    lineWidth: 1,
    lineCap: "butt",
    lineJoin: "miter",
    lineDashOffset: 0,
    globalAlpha: 1,
    font: "10px sans-serif",
    textAlign: "start",
    beginPath: () => path.begin(),
    moveTo: (x, y) => path.move(x, y),
    lineTo: (x, y) => path.line(x, y),
    arc: (x, y, radius, from, to) => path.arc(x, y, radius, from, to),
    rect: (x, y, width, height) => path.rect(x, y, width, height),
    closePath: () => path.close(),
    fill() {
      if (path.data !== "") body.push(`<path d="${path.data}" ${fillOf()}/>`);
    },
    stroke() {
      if (path.data === "") return;
      const { lineCap, lineJoin } = ink;
      const ends = `${lineCap === "butt" ? "" : ` stroke-linecap="${lineCap}"`}${lineJoin === "miter" ? "" : ` stroke-linejoin="${lineJoin}"`}`;
      const paint = paintOf("stroke", String(ink.strokeStyle), ink.globalAlpha);
      body.push(
        `<path d="${path.data}" fill="none" ${paint} stroke-width="${pathNumber(ink.lineWidth)}"${ends}${dashOf()}/>`,
      );
    },
    clip() {
      const id = `${name}clip${defs.length}`;
      defs.push(`<clipPath id="${id}"><path d="${path.data}"/></clipPath>`);
      body.push(`<g clip-path="url(#${id})">`);
      groups += 1;
    },
    fillRect(x, y, width, height) {
      const [left, top] = path.placed(x, y);
      body.push(
        `<rect x="${pathNumber(left)}" y="${pathNumber(top)}" width="${pathNumber(width)}" height="${pathNumber(height)}" ${fillOf()}/>`,
      );
    },
    fillText(text, x, y) {
      const [left, top] = path.placed(x, y);
      body.push(
        `<text x="${pathNumber(left)}" y="${pathNumber(top)}"${fontOf(ink.font, ink.textAlign)} ${fillOf()}>${escapeXml(text)}</text>`,
      );
    },
    save() {
      const values = Object.fromEntries(KEPT_SETTINGS.map((key) => [key, ink[key]])) as Kept["values"];
      stack.push({ values, dash, groups, place: path.place });
    },
    restore() {
      const kept = stack.pop();
      if (!kept) return;
      Object.assign(ink, kept.values);
      dash = kept.dash;
      path.place = kept.place;
      for (; groups > kept.groups; groups--) body.push("</g>");
    },
    translate: (x, y) => path.translate(x, y),
    rotate: (angle) => path.rotate(angle),
    setLineDash: (next: Iterable<number>) => {
      dash = [...next];
    },
    createLinearGradient: (x0, y0, x1, y1) => new Gradient([x0, y0, x1, y1]),
    measureText: (text) => ({ width: measure(text, ink.font) }),
    insert: (markup) => void body.push(markup),
    document: (width, height, title) =>
      `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" font-variant="tabular-nums"><title>${escapeXml(title)}</title>${
        defs.length > 0 ? `<defs>${defs.join("")}</defs>` : ""
      }${body.join("")}${"</g>".repeat(groups)}</svg>\n`,
  };
  return ink;
}

class Gradient implements CanvasGradient {
  private readonly ends: readonly number[];
  private readonly stops: string[] = [];
  private known = "";

  constructor(ends: readonly number[]) {
    this.ends = ends;
  }

  addColorStop(at: number, colour: string): void {
    this.stops.push(`<stop offset="${pathNumber(at)}" ${paintOf("stop-color", colour, 1)}/>`);
  }

  /** Its name in the document; written there when first used. */
  id(defs: string[], name: string): string {
    if (this.known !== "") return this.known;
    this.known = `${name}shade${defs.length}`;
    const [x1, y1, x2, y2] = this.ends.map(pathNumber);
    defs.push(
      `<linearGradient id="${this.known}" gradientUnits="userSpaceOnUse" x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}">${this.stops.join("")}</linearGradient>`,
    );
    return this.known;
  }
}

const opacity = (what: string, alpha: number) => (alpha >= 1 ? "" : ` ${what}-opacity="${pathNumber(alpha)}"`);

const ANCHOR_OF_ALIGNMENT: Readonly<Record<string, string>> = { right: "end", end: "end", center: "middle" };

/** A CSS font as attributes; the size is in px. */
function fontOf(font: string, align: string): string {
  const [, style, weight, size, family] = /^(italic )?(?:(\d+) )?([\d.]+)px (.+)$/.exec(font) ?? [];
  const anchor = ANCHOR_OF_ALIGNMENT[align];
  return (
    ` font-family="${escapeXml(family ?? "sans-serif")}" font-size="${size ?? 10}"` +
    (weight === undefined || weight === "400" ? "" : ` font-weight="${weight}"`) +
    (style === undefined ? "" : ' font-style="italic"') +
    (anchor === undefined ? "" : ` text-anchor="${anchor}"`)
  );
}
