/** Rows of break logs, for tests of refusals and their messages. */

export const HEAD = ["part", "material", "state", "wet", "outcome", "result", "result_to", "unit"];

/** A good row of a log with the given fields changed. */
export const row = (given: Partial<Record<string, string>>) =>
  HEAD.map((column) => {
    const usual = {
      part: "webbing",
      material: "x",
      state: "new",
      wet: "dry",
      outcome: "broke",
      result: "31",
      unit: "kN",
    };
    return given[column] ?? (usual as Record<string, string>)[column] ?? "";
  });

export const csv = (rows: readonly string[][], delimiter = ",") =>
  [HEAD, ...rows].map((r) => r.join(delimiter)).join("\n");
