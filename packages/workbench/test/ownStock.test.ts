/** A webbing of one's own, typed or from a test machine: what cannot be is refused, what is unlikely is told. */
import { readRig, tensionAt } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { EMPTY_STOCK, rigFrom, STOCK_FIELDS, type StockEntry, stockFrom, withPull } from "../src/index.ts";
import { loadRows } from "../src/stock/ownStock.ts";
import { readPull } from "../src/stock/readPull.ts";

const ENTRY: StockEntry = {
  ...EMPTY_STOCK,
  name: "Blue 25",
  strength: "28 kN",
  source: "its label",
  mass: "58 g/m",
  loads: [
    { load: "2 kN", stretch: "1.5 %" },
    { load: "6 kN", stretch: "4.2 %" },
  ],
};
const faultsOf = (entry: StockEntry, names: string[] = []) => {
  const read = stockFrom(entry, names);
  return read.ok ? [] : read.faults.map(({ kind, at }) => `${kind} ${at}`);
};
const doubtsOf = (entry: StockEntry) => {
  const read = stockFrom(entry);
  return read.ok ? read.doubts.map(({ kind }) => kind) : ["refused"];
};

describe("a webbing of one's own", () => {
  it("is a stock that a rig takes, with the curve that was entered", () => {
    const read = stockFrom(ENTRY);
    expect(read.ok && read.doubts).toEqual([]);
    const stocks = read.ok ? [read.stock] : [];
    const { rig, faults } = rigFrom({ stocks, webbing: "blue-25" });
    expect(faults).toEqual([]);
    const stock = rig!.main.sections[0]!.stock;
    expect(stock).toMatchObject({ name: "Blue 25", mass: 0.058, rated: { strength: 28000 }, width: 0.025 });
    expect(stock.rated.basis).toEqual({ kind: "published", note: "its label" });
    expect(tensionAt(stock.curve, 0.042)).toBeCloseTo(6000, 6);
    // Nobody measured a fast pull: as much stiffer, in proportion, as the generic one.
    expect(stock.branches[0]![0] / (6000 / 0.042)).toBeCloseTo(15000 / (6000 / 0.04), 3);
    expect(stock.basis.kind).toBe("assumed");
    expect(readRig(rigFrom({ stocks, webbing: "blue-25" }).document).ok).toBe(true);
  });

  it("that stretches backwards is refused, at the row where it does", () => {
    const loads = [
      { load: "2 kN", stretch: "3 %" },
      { load: "6 kN", stretch: "2 %" },
    ];
    expect(faultsOf({ ...ENTRY, loads })).toEqual(["backwards loads.1.stretch"]);
    expect(faultsOf({ ...ENTRY, loads: [...ENTRY.loads].reverse() })).toEqual(["backwards loads.1.load"]);
    expect(faultsOf({ ...ENTRY, loads: loads.slice(0, 1) })).toEqual(["rowMissing loads.0.load"]);
  });

  it("without name, source, unit or number is refused with every fault", () => {
    const entry = { ...ENTRY, name: " ", source: "", strength: "28", mass: "light" };
    expect(faultsOf(entry)).toEqual(["nameMissing name", "sourceMissing source", "issue strength", "issue mass"]);
    const read = stockFrom(entry);
    expect(!read.ok && read.faults.find(({ at }) => at === "strength")).toMatchObject({ remedy: "28 kN" });
    expect(faultsOf(ENTRY, ["blue 25"])).toEqual(["nameTaken name"]);
  });

  it("stronger than its yarn, or far from others of its fibre, is doubted", () => {
    expect(doubtsOf({ ...ENTRY, strength: "60 kN" })).toEqual(["strongerThanFibre"]);
    expect(doubtsOf({ ...ENTRY, strength: "7 kN" })).toEqual(["weak"]);
    expect(doubtsOf({ ...ENTRY, loads: [ENTRY.loads[0]!, { load: "60 kN", stretch: "8 %" }] })).toContain(
      "beyondStrength",
    );
    expect(
      doubtsOf({
        ...ENTRY,
        loads: [
          { load: "2 kN", stretch: "0.1 %" },
          { load: "6 kN", stretch: "0.3 %" },
        ],
      }),
    ).toEqual(["stiff"]);
    expect(
      doubtsOf({
        ...ENTRY,
        loads: [
          { load: "0.1 kN", stretch: "10 %" },
          { load: "0.6 kN", stretch: "40 %" },
        ],
      }),
    ).toEqual(["soft"]);
  });

  it("has a short name unlike those in use and those built in", () => {
    const idOf = (name: string, names: string[]) => {
      const read = stockFrom({ ...ENTRY, name }, names);
      return read.ok ? read.stock.id : "refused";
    };
    expect(idOf("Blue  25!", ["blue 25"])).toBe("blue-25-2");
    expect(idOf("dynamic rope 10", [])).toBe("own-dynamic-rope-10");
    expect(idOf("織物", [])).toBe("織物");
  });
});

describe("a force-stretch file", () => {
  const csv = (rows: readonly (readonly [number, number])[], head = "Stretch (%),Force [kN]") =>
    [head, ...rows.map((row) => row.join(","))].join("\n");
  const straight = Array.from({ length: 60 }, (_, i) => [i / 10, i / 5] as const);

  it("is read up to its largest force, in any order of columns and with decimal commas", () => {
    const read = readPull(csv([...straight, [7, 3]]));
    expect(read.ok && read.points.at(-1)![0]).toBeCloseTo(0.059, 9);
    expect(read.ok && read.points.every(([e, t]) => Math.abs(t - e * 200000) < 1e-6 * 11800)).toBe(true);
    const german = readPull("Kraft_kN;Dehnung_%\n0;0\n3,0;1,5\n6,0;3,5");
    expect(german.ok && german.points.at(-1)).toEqual([0.035, 6000]);
    expect(german.ok && loadRows(german.points).at(-1)).toEqual({ load: "6 kN", stretch: "3.5 %" });
  });

  it("is found among other columns, and stretch may be a share", () => {
    const machine = readPull(
      "time [s],grip [mm],load [lbf],strain [mm/mm]\n0:00,x,0,0\n0:01,x,500,0.01\n0:02,x,1000,0.03",
    );
    expect(machine.ok && machine.points.at(-1)![0]).toBe(0.03);
    expect(machine.ok && machine.points.at(-1)![1]).toBeCloseTo(4448.22, 2);
    expect(readPull("time [s];load [kN];strain [%]\n0;0;0\n1;1;?")).toEqual({
      ok: false,
      faults: [{ kind: "number", row: 3, got: "?" }],
    });
  });

  it("with two columns of one kind is refused: nobody guesses which is meant", () => {
    expect(readPull("load [kN],frame [%],gauge [%]\n0,0,0\n1,2,1")).toEqual({
      ok: false,
      faults: [{ kind: "severalColumns", first: "frame [%]", second: "gauge [%]" }],
    });
  });

  it("with semicolons is parted by them, whichever of its numbers have decimal commas", () => {
    const read = readPull("Force lbf;Stretch %\n0;0\n500;1,2\n1000;2,1\n2000;3,9\n");
    expect(read.ok && loadRows(read.points).at(-1)!.stretch).toBe("3.9 %");
    expect(read.ok && read.points.at(-1)![1]).toBeCloseTo(2000 * 4.4482216, 0);
  });

  it("gives rows that make a stock", () => {
    const read = readPull(csv(straight));
    expect(faultsOf({ ...ENTRY, loads: read.ok ? loadRows(read.points) : [] })).toEqual([]);
  });

  it("that stretches backwards, says no units, or holds no numbers is refused", () => {
    const kinds = (text: string) => {
      const read = readPull(text);
      return read.ok ? [] : read.faults.map(({ kind }) => kind);
    };
    expect(
      kinds(
        csv([
          [0, 0],
          [3, 2],
          [2, 6],
        ]),
      ),
    ).toEqual(["backwards"]);
    expect(kinds("0,0\n1,2")).toEqual(["columnNames"]);
    expect(kinds("force,stretch\n0,0\n1,2")).toEqual(["columnNames"]);
    expect(kinds("force_kN,stretch_%\n0,0\n1,much")).toEqual(["number"]);
    expect(kinds("force_kN\n1")).toContain("columns");
    expect(kinds("")).toEqual(["empty"]);
  });
});

describe("the form", () => {
  it("asks for everything that an entry holds besides its loads, each once", () => {
    const { loads: _, ...texts } = EMPTY_STOCK;
    expect(STOCK_FIELDS.map(({ at }) => at).toSorted()).toEqual(Object.keys(texts).toSorted());
  });

  it("begins with an answer that is one of those to choose from", () => {
    for (const { at, options } of STOCK_FIELDS) {
      if (options) expect(options.map(({ value }) => value)).toContain(EMPTY_STOCK[at]);
    }
  });

  it("takes the stretch of a test machine's file, and leaves the entry as it is where that cannot be read", async () => {
    const file = (text: () => Promise<string>) => ({ name: "pull.csv", text });
    const good = await withPull(
      ENTRY,
      file(async () => "load kN,stretch %\n0,0\n2,1\n4,2\n6,3\n"),
    );
    expect(good.entry.loads.at(-1)).toMatchObject({ load: "6 kN", stretch: "3 %" });
    expect(good.entry.name).toBe(ENTRY.name);
    expect(good.told).toContain("pull.csv");
    const bad = await withPull(
      ENTRY,
      file(async () => "no table"),
    );
    expect(bad.entry).toBe(ENTRY);
    expect(bad.told).toContain("pull.csv");
    const gone = await withPull(
      ENTRY,
      file(() => Promise.reject(new Error("gone"))),
    );
    expect(gone.entry).toBe(ENTRY);
    expect(gone.told).not.toBe(bad.told);
  });
});
