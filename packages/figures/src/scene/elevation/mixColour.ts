/** Mixes two colours given as #rrggbb; canvases of some browsers do not know color-mix. */
export function mixColour(a: string, b: string, share: number): string {
  let out = "#";
  for (let i = 1; i < 7; i += 2) {
    const from = Number.parseInt(a.slice(i, i + 2), 16);
    const to = Number.parseInt(b.slice(i, i + 2), 16);
    out += Math.round(from + (to - from) * share)
      .toString(16)
      .padStart(2, "0");
  }
  return out;
}
