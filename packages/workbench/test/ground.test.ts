/** A ground profile from a file: its unit is said or asked for, and nothing of the ground is lost. */
import { describe, expect, it } from "vitest";
import { reachDoubt, readProfile, rigFrom } from "../src/index.ts";

const kinds = (text: string, unit?: "m" | "ft") => {
  const read = readProfile(text, unit);
  return read.ok ? [] : read.faults.map(({ kind }) => kind);
};
const BODY = "0,-1\n100,-80\n200,-2";

describe("a distance-height file", () => {
  it("in feet is told by its first line, and read in metres", () => {
    const read = readProfile(`distance (ft),height (ft)\n${BODY}`);
    // To the centimetre, and never lower than it is.
    expect(read.ok && read.profile).toEqual([
      ["0 m", "-0.3 m"],
      ["30.48 m", "-24.38 m"],
      ["60.96 m", "-0.6 m"],
    ]);
    const { rig, unconfirmed } = rigFrom({ span: "60 m", profile: read.ok ? read.profile.map((p) => [...p]) : [] });
    expect(rig?.ground[1]).toEqual([30.48, -24.38]);
    expect(unconfirmed).not.toContain("ground");
  });

  it("finds distance and height by their names, in any order and among other columns", () => {
    const read = (text: string) => readProfile(text);
    const wanted = read("distance (m),height (m)\n0,-1\n10,-20\n50,-2");
    expect(wanted.ok).toBe(true);
    expect(read("z (m),x (m)\n-1,0\n-20,10\n-2,50")).toEqual(wanted);
    expect(read("distance (m),height (m),,\n0,-1,,\n10,-20,,\n50,-2,,\n,,,")).toEqual(wanted);
    expect(read("Survey of May\n\ndistance (m),height (m)\n0,-1\n10,-20\n50,-2")).toEqual(wanted);
    expect(readProfile("0,-1,\n10,-20,\n50,-2,", "m")).toEqual(wanted);
    expect(read("height (m),distance (m)\n-1,0\n-20,10\n-2,50")).toEqual(wanted);
    expect(read("no,chainage [m],elevation [m],remark\n1,0,-1,rim\n2,10,-20,\n3,50,-2,tree")).toEqual(wanted);
    expect(read("point;east [m];down [m]\n1;0;-1\n2;10;-20\n3;50;-2")).toEqual(wanted);
  });

  it("with more columns that could be a height is not guessed at", () => {
    const faultsIn = (text: string, unit?: "m") => {
      const read = readProfile(text, unit);
      return read.ok ? [] : read.faults;
    };
    expect(faultsIn("x [m],y [m],z [m]\n0,0,-1\n10,2,-20\n50,9,-2")).toEqual([
      { kind: "severalColumns", first: "y [m]", second: "z [m]" },
    ]);
    expect(faultsIn("1,0,-1\n2,10,-20\n3,50,-2", "m")).toEqual([{ kind: "columns", row: 1, count: 3 }]);
  });

  it("that does not say its unit is not guessed at", () => {
    expect(kinds(BODY)).toEqual(["unit"]);
    expect(kinds(`distance,height\n${BODY}`)).toEqual(["unit"]);
    expect(kinds(`distance [m],height\n${BODY}`)).toEqual(["unit"]);
    const read = readProfile(BODY, "m");
    expect(read.ok && [read.unit, read.profile[1]]).toEqual(["m", ["100 m", "-80 m"]]);
  });

  it("that says two units, another one, or not the one that somebody said, is refused with what it says", () => {
    const fault = (text: string, unit?: "m" | "ft") => {
      const read = readProfile(text, unit);
      return read.ok ? undefined : read.faults[0];
    };
    expect(fault(`distance [m],height [ft]\n${BODY}`)).toEqual({ kind: "unitsDiffer", first: "m", second: "ft" });
    expect(fault(`x (yd),z (yd)\n${BODY}`, "m")).toEqual({ kind: "unitUnknown", got: "yd" });
    expect(fault(`x (ft),z (ft)\n${BODY}`, "m")).toEqual({ kind: "unitSaid", said: "ft", asked: "m" });
    expect(readProfile(`x (ft),z (ft)\n${BODY}`, "ft").ok).toBe(true);
    expect(fault(`x ('),z (')\n${BODY}`)).toBeUndefined();
  });

  it("that reaches far beyond the span is doubted, and more so where the other unit would fit", () => {
    const doubt = (unit: "m" | "ft", span: number) => {
      const read = readProfile(BODY, unit);
      return read.ok ? reachDoubt(read.profile, read.unit, span) : undefined;
    };
    // 200 ft are 61 m, and 200 m are 656 ft.
    expect(doubt("m", 60)).toEqual({ reach: 200, span: 60, unit: "ft" });
    expect(doubt("ft", 200)).toEqual({ reach: 60.96, span: 200, unit: "m" });
    expect(doubt("m", 120)).toEqual({ reach: 200, span: 120, unit: undefined });
    expect([doubt("ft", 60), doubt("m", 200), doubt("m", 180)]).toEqual([undefined, undefined, undefined]);
  });

  it("that goes backwards, counts from the sea, or holds no numbers is refused", () => {
    expect(kinds("0,-1\n50,-20\n40,-10", "m")).toEqual(["backwards"]);
    expect(kinds("0,412\n50,380\n100,411", "m")).toEqual(["datum"]);
    expect(kinds("0,-1\n50,deep", "m")).toEqual(["number"]);
    expect(kinds("0\n1", "m")).toContain("columns");
  });

  it("of very many points is thinned out, and then lies nowhere below itself", () => {
    const points = Array.from({ length: 5000 }, (_, i) => [i / 50, -20 + 15 * Math.sin(i / 37)] as const);
    const read = readProfile(points.map((point) => point.join(";")).join("\n"), "m");
    if (!read.ok) throw new Error("refused");
    expect(read.profile.length).toBeLessThanOrEqual(1000);
    expect(read.leftOut).toBe(5000 - read.profile.length);
    const kept = read.profile.map((point) => point.map(Number.parseFloat) as [number, number]);
    const heightAt = (x: number) => {
      const i = kept.findIndex(([to]) => to >= x);
      if (i <= 0) return kept[0]![1];
      const [[x0, z0], [x1, z1]] = [kept[i - 1]!, kept[i]!];
      return z0 + ((z1 - z0) * (x - x0)) / (x1 - x0);
    };
    // Written to the centimetre.
    for (const [x, z] of points) expect(heightAt(x)).toBeGreaterThanOrEqual(z - 0.006);
  });
});
