/** Figures of a page that are SVG already, as the body of a picture: copies that bring their looks with them. */
import { escapeXml, isKeptElement, isPlace, looksOf, type PictureBody, pathNumber, SERIF } from "@secondline/figures";

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
        `<text x="${EDGE_WIDTH}" y="${pathNumber(height + 15)}" font-family="${escapeXml(SERIF)}" font-size="16" font-weight="600" fill="${ink}">${escapeXml(title)}</text>`,
      );
      height += TITLE_HEIGHT;
    }
    copies.push(
      `<svg x="${EDGE_WIDTH}" y="${pathNumber(height)}" width="${pathNumber(box.width)}" height="${pathNumber(box.height)}" viewBox="${figure.getAttribute("viewBox") ?? `0 0 ${pathNumber(box.width)} ${pathNumber(box.height)}`}">${copyOf(figure)}</svg>`,
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
  if (!isKeptElement(name)) return "";
  const style = getComputedStyle(element);
  const defined = element.closest("defs, pattern, clipPath, linearGradient, marker") !== null;
  if (!defined && (style.display === "none" || style.visibility === "hidden" || style.opacity === "0")) return "";
  const attributes = [...element.attributes]
    .filter((attribute) => isPlace(attribute.name))
    .map((attribute) => ` ${attribute.name}="${escapeXml(attribute.value)}"`);
  const looks = looksOf(name, (look) => style.getPropertyValue(look));
  return `<${name}${attributes.join("")}${looks}>${copyOf(element)}</${name}>`;
}
