/** Figures of a page that are SVG already, as the body of a picture: copies that bring their looks with them. */
import { escapeXml, number, type PictureBody, SERIF } from "@secondline/figures";

export interface Figure {
  readonly drawing: SVGSVGElement;
  /** Stands above it. */
  readonly title?: string | undefined;
}

const FIGURE_GAP = 28;
const EDGE_WIDTH = 20;
const TITLE_HEIGHT = 24;

/** The figures under one another. They hold still for it: what can be dragged or focused is a plain drawing in the copy. */
export function figuresBody(figures: readonly Figure[], ink: string): PictureBody {
  let height = FIGURE_GAP / 2;
  let width = 0;
  const copies: string[] = [];
  for (const { drawing: figure, title } of figures) {
    const box = figure.getBoundingClientRect();
    if (title !== undefined) {
      copies.push(
        `<text x="${EDGE_WIDTH}" y="${number(height + 15)}" font-family="${escapeXml(SERIF)}" font-size="16" font-weight="600" fill="${ink}">${escapeXml(title)}</text>`,
      );
      height += TITLE_HEIGHT;
    }
    copies.push(
      `<svg x="${EDGE_WIDTH}" y="${number(height)}" width="${number(box.width)}" height="${number(box.height)}" viewBox="${figure.getAttribute("viewBox") ?? `0 0 ${number(box.width)} ${number(box.height)}`}">${copyOf(figure)}</svg>`,
    );
    height += box.height + FIGURE_GAP;
    width = Math.max(width, box.width + 2 * EDGE_WIDTH);
  }
  return {
    width: Math.ceil(width),
    height: Math.ceil(height),
    markup: copies.join(""),
    draw: () => undefined,
  };
}

const SHAPES = new Set(["path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan"]);
const KEPT_ELEMENTS = new Set([
  ...SHAPES,
  "g",
  "defs",
  "pattern",
  "clipPath",
  "svg",
  "linearGradient",
  "stop",
  "marker",
  "use",
]);
/** Attributes that say where and what; how it looks comes from the page's styles. */
const PLACES =
  /^(id|d|x|y|x1|y1|x2|y2|cx|cy|r|rx|ry|dx|dy|width|height|points|transform|viewBox|offset|href|orient|refX|refY|marker(Width|Height|Units)|pattern(Units|Transform|ContentUnits)|clipPathUnits|preserveAspectRatio|rotate|textLength|lengthAdjust)$/;
const LOOKS = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-opacity",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linecap",
  "stroke-linejoin",
  "opacity",
  "clip-path",
  "marker-start",
  "marker-end",
  "paint-order",
];
const LETTERS = ["font-family", "font-size", "font-weight", "font-style", "text-anchor", "dominant-baseline"];

/** What is inside of an element, as markup that needs no page around it. */
function copyOf(element: Element): string {
  return [...element.childNodes]
    .map((node) => {
      if (node instanceof Element) return elementCopy(node);
      return node.nodeType === Node.TEXT_NODE ? escapeXml(node.textContent ?? "") : "";
    })
    .join("");
}

function elementCopy(element: Element): string {
  const name = element.localName;
  if (!KEPT_ELEMENTS.has(name)) return "";
  const style = getComputedStyle(element);
  const defined = element.closest("defs, pattern, clipPath, linearGradient, marker") !== null;
  if (!defined && (style.display === "none" || style.visibility === "hidden" || style.opacity === "0")) return "";
  const attributes = [...element.attributes]
    .filter((attribute) => PLACES.test(attribute.name))
    .map((attribute) => ` ${attribute.name}="${escapeXml(attribute.value)}"`);
  const written = name === "text" || name === "tspan";
  const looks = SHAPES.has(name) || name === "g" || name === "use" ? [...LOOKS, ...(written ? LETTERS : [])] : [];
  const own = looks.map((look) => lookOf(look, style, name === "g")).join("");
  const inside = copyOf(element);
  return `<${name}${attributes.join("")}${own}>${inside}</${name}>`;
}

/** What SVG takes when nothing is said. */
const SVG_DEFAULTS: Readonly<Record<string, string>> = {
  "fill-opacity": "1",
  "stroke-opacity": "1",
  stroke: "none",
  "stroke-width": "1px",
  "stroke-dasharray": "none",
  "stroke-linecap": "butt",
  "stroke-linejoin": "miter",
  opacity: "1",
  "clip-path": "none",
  "marker-start": "none",
  "marker-end": "none",
  "paint-order": "normal",
  "font-style": "normal",
  "text-anchor": "start",
  "dominant-baseline": "auto",
};
/** Of a group only what holds for the group as a whole; the rest stands at every shape. */
const OF_GROUPS = new Set(["opacity", "clip-path"]);

function lookOf(look: string, style: CSSStyleDeclaration, group: boolean): string {
  if (group && !OF_GROUPS.has(look)) return "";
  const value = style.getPropertyValue(look);
  if (value === "" || value === SVG_DEFAULTS[look]) return "";
  if (look === "fill" || look === "stroke") return colourOf(look, value);
  return ` ${look}="${escapeXml(value.replace(/url\("(#[^"]+)"\)/, "url($1)"))}"`;
}

/** A computed colour as programs that read SVG know it, with what is seen through apart. */
function colourOf(look: "fill" | "stroke", value: string): string {
  const mixed = /^color\(srgb ([\d.e-]+) ([\d.e-]+) ([\d.e-]+)(?: \/ ([\d.]+))?\)$/.exec(value);
  const plain = /^rgba?\(([\d.]+), ([\d.]+), ([\d.]+)(?:, ([\d.]+))?\)$/.exec(value);
  const found = mixed ?? plain;
  if (!found) return ` ${look}="${escapeXml(value.replace(/url\("(#[^"]+)"\)/, "url($1)"))}"`;
  const [, r, g, b, alpha] = found;
  const parts = [r, g, b].map((part) => Math.round(Number(part) * (mixed ? 255 : 1)));
  const through = alpha === undefined || alpha === "1" ? "" : ` ${look}-opacity="${alpha}"`;
  return ` ${look}="rgb(${parts.join(",")})"${through}`;
}
