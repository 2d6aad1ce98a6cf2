/** Far ridges around the gap, as they stand in haze one behind the other. */
import type { Gap } from "./gap.ts";
import { roughness } from "./noise.ts";
import type { TriangleMesh } from "./terrain.ts";

const POINTS_AROUND = 120;

/** Strips whose upper edge is a skyline; the normal's x holds how dark the ridge is at its top and foot [-]. */
export function ridgeMesh(gap: Gap): TriangleMesh {
  const rings = [
    { radius: 9 * gap.span + 500, height: 0.13, dark: 0.16 },
    { radius: 6 * gap.span + 320, height: 0.075, dark: 0.27 },
    { radius: 4 * gap.span + 200, height: 0.03, dark: 0.38 },
  ];
  const position = new Float32Array(rings.length * POINTS_AROUND * 6);
  const normal = new Float32Array(position.length);
  const index = new Uint32Array(rings.length * POINTS_AROUND * 6);
  rings.forEach(({ radius, height, dark }, r) => {
    for (let k = 0; k < POINTS_AROUND; k++) {
      const angle = (2 * Math.PI * k) / POINTS_AROUND;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const top =
        radius * height * (0.55 + 0.75 * roughness(4 * c + 9 * r, 4 * s + 5) + 0.25 * roughness(17 * c, 17 * s + r));
      const v = (r * POINTS_AROUND + k) * 6;
      position.set([gap.span / 2 + radius * c, radius * s, gap.edgeA + top], v);
      position.set([gap.span / 2 + radius * c, radius * s, gap.edgeA - 0.12 * radius], v + 3);
      normal.set([dark, 0, 0, 0, 0, 0], v);
      const a = 2 * (r * POINTS_AROUND + k);
      const b = 2 * (r * POINTS_AROUND + ((k + 1) % POINTS_AROUND));
      index.set([a, b, b + 1, a, b + 1, a + 1], (r * POINTS_AROUND + k) * 6);
    }
  });
  return { position, normal, index };
}
