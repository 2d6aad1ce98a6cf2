/**
 * Copies of drawings in a page: the elements and attributes that a copy keeps, and its computed looks as attributes, so that it
 * needs no page around it.
 */
import { escapeXml } from "./svgPath.ts";

const SHAPE_ELEMENTS = new Set(["path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan"]);
const OTHER_ELEMENTS = new Set(["g", "defs", "pattern", "clipPath", "svg", "linearGradient", "stop", "marker", "use"]);

/** Elements that a copy has. */
export const isKeptElement = (name: string): boolean => SHAPE_ELEMENTS.has(name) || OTHER_ELEMENTS.has(name);

/** Attributes of place and shape; the looks come from the page's styles. */
const PLACE_ATTRIBUTES =
  /^(id|d|x|y|x1|y1|x2|y2|cx|cy|r|rx|ry|dx|dy|width|height|points|transform|viewBox|offset|href|orient|refX|refY|marker(Width|Height|Units)|pattern(Units|Transform|ContentUnits)|clipPathUnits|preserveAspectRatio|rotate|textLength|lengthAdjust)$/;

export const isPlace = (attribute: string): boolean => PLACE_ATTRIBUTES.test(attribute);

const LOOK_PROPERTIES = [
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
const TEXT_PROPERTIES = ["font-family", "font-size", "font-weight", "font-style", "text-anchor", "dominant-baseline"];

/** SVG's values for absent attributes. */
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
/** Properties that a group has as a whole; all others stand at every shape. */
const GROUP_PROPERTIES = ["opacity", "clip-path"];

/** The looks of an element as attributes. `computed`: a property's computed value in the page. */
export function looksOf(element: string, computed: (look: string) => string): string {
  if (element === "g") return GROUP_PROPERTIES.map((look) => lookOf(look, computed(look))).join("");
  if (!SHAPE_ELEMENTS.has(element) && element !== "use") return "";
  const letters = element === "text" || element === "tspan" ? TEXT_PROPERTIES : [];
  return [...LOOK_PROPERTIES, ...letters].map((look) => lookOf(look, computed(look))).join("");
}

function lookOf(look: string, value: string): string {
  if (value === "" || value === SVG_DEFAULTS[look]) return "";
  if (look === "fill" || look === "stroke") return colourOf(look, value);
  return ` ${look}="${escapeXml(unquoted(value))}"`;
}

const unquoted = (value: string): string => value.replace(/url\("(#[^"]+)"\)/, "url($1)");

/** A computed colour in a form that programs for SVG know, with its opacity as an attribute of its own. */
function colourOf(look: "fill" | "stroke", value: string): string {
  const mixed = /^color\(srgb ([\d.e-]+) ([\d.e-]+) ([\d.e-]+)(?: \/ ([\d.]+))?\)$/.exec(value);
  const plain = /^rgba?\(([\d.]+), ([\d.]+), ([\d.]+)(?:, ([\d.]+))?\)$/.exec(value);
  const found = mixed ?? plain;
  if (!found) return ` ${look}="${escapeXml(unquoted(value))}"`;
  const [, r, g, b, alpha] = found;
  const parts = [r, g, b].map((part) => Math.round(Number(part) * (mixed ? 255 : 1)));
  const through = alpha === undefined || alpha === "1" ? "" : ` ${look}-opacity="${alpha}"`;
  return ` ${look}="rgb(${parts.join(",")})"${through}`;
}
