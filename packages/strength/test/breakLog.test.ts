import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BreakTest, OUTCOMES, readBreakLog, readTest, writeBreakLog } from "../src/index.ts";

const HEADER = "part,material,state,wet,outcome,result,result_to,unit,date";
const log = (...lines: string[]) => readBreakLog([HEADER, ...lines].join("\n"));
const faultsOf = (reading: ReturnType<typeof readBreakLog>) => {
  if (reading.ok) throw new Error("the log was taken as sound");
  return reading.faults.map((fault) => `${fault.line} ${fault.column}`);
};

describe("a sound log", () => {
  it("is read with loads in newtons and censored results as what they are", () => {
    const reading = log(
      "webbing,polyester,new,dry,broke,30.5,,kN,2026-05-01",
      "webbing,polyester,new,dry,stopped,25,,kN,",
      "webbing,polyester,new,wet,broke between,20,22,kN,",
    );
    expect(reading).toMatchObject({
      ok: true,
      tests: [
        { line: 2, wet: false, result: { kind: "exact", value: 30500 }, date: "2026-05-01" },
        { line: 3, result: { kind: "above", value: 25000 } },
        { line: 4, wet: true, result: { kind: "between", from: 20000, to: 22000 } },
      ],
    });
  });

  it("may carry remarks, empty lines, a byte order mark and line breaks in quoted cells", () => {
    const csv = `\uFEFF# all invented\r\n${HEADER},note\r\n\r\nshackle,steel,scratched,dry,broke,57,,kN,,"two\r\nlines"\r\nshackle,steel,scratched,dry,broke,-1,,kN,,\r\n`;
    expect(faultsOf(readBreakLog(csv))).toEqual(["6 result"]);
  });

  it("comes back the same after it is written", () => {
    const text = fc.constantFrom("webbing", 'with "quotes", and commas', "größer");
    const note = fc.constantFrom("one line", "zwei\nZeilen", "=HYPERLINK(1)", "-", "+3", "@a", "'quoted'");
    const force = fc.integer({ min: 100, max: 60_000 });
    const test: fc.Arbitrary<BreakTest> = fc
      .record({
        part: text,
        material: text,
        state: text,
        note,
        wet: fc.boolean(),
        outcome: fc.constantFrom(...OUTCOMES),
        force,
      })
      .map(({ force: value, outcome, ...rest }) => ({ ...rest, outcome, result: resultOf(outcome, value) }));
    fc.assert(
      fc.property(fc.array(test, { minLength: 1, maxLength: 8 }), (tests) => {
        const reading = readBreakLog(writeBreakLog(tests));
        expect(reading.ok && reading.tests.map(({ line, ...rest }) => rest)).toEqual(tests);
      }),
      { seed: 2, numRuns: 50 },
    );
  });
});

it("has no cell that a spreadsheet would compute", () => {
  const test = { part: "webbing", material: "=1+1", state: "new", wet: false, outcome: "broke", note: "@sum" } as const;
  const written = writeBreakLog([{ ...test, result: { kind: "exact", value: 20_000 } }]);
  expect(written).toContain("'=1+1");
  expect(written).toContain("'@sum");
});

function resultOf(outcome: (typeof OUTCOMES)[number], value: number): BreakTest["result"] {
  if (outcome === "broke between") return { kind: "between", from: value, to: value + 500 };
  return { kind: outcome === "broke" ? "exact" : outcome === "broke below" ? "below" : "above", value };
}

describe("a log from a spreadsheet", () => {
  const read = (text: string) => {
    const reading = readBreakLog(text);
    return reading.ok ? reading.tests.map(({ result }) => result.kind === "exact" && result.value) : reading.faults;
  };
  const HEAD = ["part", "material", "state", "wet", "outcome", "result", "unit"];
  const rows = (delimiter: string, ...results: string[]) =>
    [HEAD, ...results.map((result) => ["webbing", "x", "new", "dry", "broke", result, "kN"])]
      .map((cells) => cells.join(delimiter))
      .join("\n");

  it("may part its cells by semicolons or tabs, and then write decimal commas", () => {
    expect(read(rows(";", "31,2", "30"))).toEqual([31_200, 30_000]);
    expect(read(rows("\t", "31.2"))).toEqual([31_200]);
  });

  it("that mixes decimal points and commas is refused: 1.234 may be a thousand", () => {
    expect(read(rows(";", "31,2", "1.234"))).toMatchObject([{ line: 3, column: "result", got: '"1.234"' }]);
  });

  it("with commas between its cells must write points, and is told so", () => {
    expect(read(rows(",", '"31,2"'))).toMatchObject([{ line: 2, column: "result" }]);
    expect(read(rows(",", '"31,2"'))).toMatchObject([{ message: { code: "cell.decimalComma" } }]);
  });

  it("may write its columns with capitals and spaces, its words with capitals, and leave empty cells behind", () => {
    const csv = "Part,Material,State,Wet,Taken from,Outcome,Result,Unit,,\nwebbing,x,new,Dry,reel,Broke,31,kN,,\n";
    expect(read(csv)).toEqual([31_000]);
  });

  it("with a unit in a column's name is told where units go", () => {
    const faults = JSON.stringify(read("part,material,state,wet,outcome,Result [kN]\nwebbing,x,new,dry,broke,31\n"));
    expect(faults).toContain(JSON.stringify({ code: "log.meant", values: { column: "result" } }));
  });

  it("keeps its word that it is invented behind a byte order mark", () => {
    const reading = readBreakLog(`\uFEFF# Invented\n${rows(",", "31")}`);
    expect(reading.ok && reading.tests[0]!.invented).toBe(true);
  });
});

describe("a faulty log is refused whole, every line and column named", () => {
  it("characters that are not seen, cell by cell; only notes may have lines", () => {
    const csv = `${HEADER},note\nshackle,"st\neel",scr\u202eatched,dry,broke,57,,kN,,"two\nlines"\nshackle,steel,new,dry,broke,57,,kN,,\x1b[2K\n`;
    expect(faultsOf(readBreakLog(csv))).toEqual(["2 material", "2 state", "5 note"]);
  });

  it("missing, unknown and repeated columns", () => {
    expect(faultsOf(readBreakLog("part,material,state,outcome,result,unit,colour,part\n"))).toEqual([
      "1 wet",
      "1 colour",
      "1 part",
    ]);
  });

  it("negative results, words for numbers, impossible dates, unknown outcomes: all at once", () => {
    const reading = log(
      "webbing,polyester,new,dry,broke,-3,,kN,",
      "webbing,polyester,new,dry,broke,12 kN,,kN,",
      "webbing,polyester,new,damp,snapped,12,,kN,2026-02-30",
      "webbing,,new,dry,broke between,12,11,kN,",
      "webbing,polyester,new,dry,broke,12,,kN,2026-05-01",
    );
    expect(faultsOf(reading)).toEqual([
      "2 result",
      "3 result",
      "4 date",
      "4 wet",
      "4 outcome",
      "5 result_to",
      "5 material",
    ]);
  });

  it("mixed units name both lines", () => {
    const reading = log("a,b,c,dry,broke,12,,kN,", "a,b,c,dry,broke,2700,,lbf,");
    expect(faultsOf(reading)).toEqual(["3 unit"]);
    expect(!reading.ok && reading.faults[0]!.message).toMatchObject({ values: { line: 2, first: "kN" } });
  });

  it("unknown units, lines with too few cells, broken quotes and an empty file", () => {
    expect(faultsOf(log("a,b,c,dry,broke,12,,stone,"))).toEqual(["2 unit"]);
    expect(faultsOf(log("a,b,c,dry,broke"))).toEqual(["2 "]);
    expect(faultsOf(log('a,b,c,dry,broke,12,,kN,"2026-05-01'))).not.toEqual([]);
    expect(faultsOf(readBreakLog(""))).toEqual(["1 "]);
    expect(faultsOf(log())).toEqual(["1 "]);
  });
});

it("a form is read like a line of a log", () => {
  const fields = {
    part: "webbing",
    material: "x",
    state: "new",
    wet: "dry",
    outcome: "broke",
    result: "28",
    unit: "kN",
  };
  expect(readTest(fields, 0)).toMatchObject({ ok: true, value: { result: { kind: "exact", value: 28000 } } });
  expect(readTest({ ...fields, result: "" }, 0)).toMatchObject({ ok: false, faults: [{ column: "result" }] });
});
