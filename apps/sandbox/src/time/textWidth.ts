/** Width of a label at 13 px in the sans face [px]; measured once per text. */
const widths = new Map<string, number>();
let pen: CanvasRenderingContext2D | null | undefined;

export function axisTextWidth(text: string): number {
  const known = widths.get(text);
  if (known !== undefined) return known;
  pen ??= document.createElement("canvas").getContext("2d");
  if (!pen) return text.length * 7;
  pen.font = '13px "IBM Plex Sans", "Segoe UI", system-ui, sans-serif';
  const width = pen.measureText(text).width;
  // Until the face is loaded another one is measured: that width must not be kept.
  if (document.fonts.status === "loaded") widths.set(text, width);
  return width;
}
