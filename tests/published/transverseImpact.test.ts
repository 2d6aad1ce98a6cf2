/**
 * A line struck across at a constant speed: J. C. Smith, F. L. McCrackin & H. F. Schiefer, Textile Res. J. 28 (1958) 288;
 * J. D. Cole, C. B. Dougherty & J. H. Huth, J. Appl. Mech. 20 (1953) 519; with prestrain F. O. Ringleb, J. Appl. Mech. 24 (1957)
 * 417. Equations from memory and derived anew; the table is computed from them.
 */
import { BareLine } from "@secondline/engine";
import { describe, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";
import { publishedTable } from "../support/table.ts";

const { check, keeps } = evidence("transverseImpact");

const [stiffness, mass] = [60_000, 0.06];
const c = Math.sqrt(stiffness / mass);

/** Half of a long line, its near end moved across at V; read when the axial wave is at 0.9 of it. */
function struck(V: number, prestrain: number) {
  const [length, elements] = [60, 1200];
  const line = new BareLine({
    make: {
      material: {
        mass,
        curve: [
          [0, 0],
          [1, stiffness],
        ],
        branches: [],
      },
    },
    length,
    elements,
    weightless: true,
  });
  line.lay([0, 0, 0], [length * (1 + prestrain), 0, 0]);
  line.moveEnd("first", [0, 0, V]);
  const time = (0.9 * length) / c;
  while (line.time < time) line.advance(1);
  // Elements behind the axial front and not too near to it, where the chain rings.
  const behind = Math.floor(0.6 * elements);
  const sum = Array.from({ length: behind }, (_, e) => line.tension(e)).reduce((total, T) => total + T, 0);
  // The transverse front is where half of the speed has been taken over.
  let front = 0;
  while (line.velocity(front)[2] > 0.5 * V) front++;
  const [fast, slow] = [line.velocity(front - 1)[2], line.velocity(front)[2]];
  const share = (fast - 0.5 * V) / (fast - slow);
  const [x0, x1] = [line.position(front - 1)[0], line.position(front)[0]];
  const force = Array.from({ length: behind }, (_, e) => e).filter((e) => e > 1 && e < front - 6);
  const across =
    force.reduce((total, e) => {
      const [p, q] = [line.position(e), line.position(e + 1)];
      return total + (2 * line.tension(e) * (p[2] - q[2])) / Math.hypot(q[0] - p[0], q[2] - p[2]);
    }, 0) / force.length;
  return { strain: sum / behind / stiffness, front: (x0 + share * (x1 - x0)) / line.time, force: across };
}

describe("a line struck across at a constant speed", () => {
  const rows = publishedTable("transverseImpact.csv").filter(
    (row) => [0.005, 0.01, 0.02, 0.05, 0.1].includes(row.V_over_c!) && [0, 0.02, 0.04].includes(row.e0!),
  );
  for (const row of rows) {
    const [v, e0] = [row.V_over_c!, row.e0!];
    it(`at ${v} of the wave speed with a prestrain of ${e0} stretches to ${row.strain_e}`, () => {
      const got = struck(v * c, e0);
      const at = `struck at ${v} of the wave speed, prestrain ${e0}`;
      const added = [[got.strain - e0, row.strain_e! - e0]] as const;
      const ringing = "mean over a ringing chain";
      check({ source: "smith", quantity: `added strain, ${at}`, pairs: added, share: 0.03, why: ringing });
      const fronts = [[got.front / c, row.transverse_front_lab_over_c!]] as const;
      const wide = "the slowest front has come 25 elements and is a few wide";
      check({ source: "smith", quantity: `speed of the kink over c, ${at}`, pairs: fronts, share: 0.03, why: wide });
    });
  }

  // Highline numbers, computed: EA = 60 kN, 0.06 kg/m, struck at 6 m/s.
  for (const [tension, after, front, force] of [
    [0, 41.56555, 25.63668, 18.94407],
    [1000, 1008.2665, 130.57883, 92.56053],
    [2000, 2005.81202, 185.77346, 129.49751],
  ] as const) {
    it(`carrying ${tension} N, struck at 6 m/s, pulls with ${force} N until the first reflection returns`, () => {
      const got = struck(6, tension / stiffness);
      for (const [quantity, unit, found, expected, share, why] of [
        ["added tension", "N", got.strain * stiffness - tension, after - tension, 0.03, "mean over a ringing chain"],
        ["speed of the kink", "m/s", got.front, front, 0.03, "the front has come 25 elements and is a few wide"],
        ["force across", "N", got.force, force, 0.02, "both halves; mean over the kink's straight side"],
      ] as const) {
        const at = `${quantity}, a line with ${tension} N struck at 6 m/s`;
        check({ source: "smith", quantity: at, unit, pairs: [[found, expected]], share, why });
      }
    });
  }
});

keeps();
