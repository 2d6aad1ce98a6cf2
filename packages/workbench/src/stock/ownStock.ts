/**
 * A webbing or rope of one's own, as somebody enters it: what it is called and made of, what it holds and on what basis, what it
 * weighs, how it stretches. What nobody can enter, how much stiffer a fast pull is, is taken over from a generic one of its kind.
 */

import {
  fieldAt,
  formatPercent,
  GENERIC_STOCKS,
  type LineStock,
  type RigDocument,
  type RigFact,
  readField,
  tensionAt,
} from "@secondline/rig";
import { stockName } from "@secondline/words";
import { sayNewRig } from "@secondline/words/newRig";
import { backwards, type PullPoint } from "./readPull.ts";

export type StockDocument = NonNullable<RigDocument["stocks"]>[number];

/** As typed. */
export interface StockEntry {
  readonly name: string;
  readonly fibre: string;
  readonly form: string;
  readonly strength: string;
  /** How the strength is known: one of the kinds of basis, and its source. */
  readonly basisKind: string;
  readonly source: string;
  readonly mass: string;
  readonly width: string;
  /** Load and stretch under it; at least two. */
  readonly loads: readonly { readonly load: string; readonly stretch: string }[];
}
export type StockEntryField = Exclude<keyof StockEntry, "loads"> | `loads.${number}.load` | `loads.${number}.stretch`;

export const EMPTY_STOCK: StockEntry = {
  name: "",
  fibre: "polyester",
  form: "webbing",
  strength: "",
  basisKind: "published",
  source: "",
  mass: "",
  width: "",
  loads: [
    { load: "2 kN", stretch: "" },
    { load: "6 kN", stretch: "" },
  ],
};

export type StockFault =
  | { readonly kind: "issue"; readonly at: StockEntryField; readonly message: RigFact; readonly remedy?: string }
  | { readonly kind: "nameMissing" | "nameTaken" | "sourceMissing" | "rowMissing"; readonly at: StockEntryField }
  | {
      readonly kind: "backwards";
      readonly at: StockEntryField;
      readonly values: Readonly<Record<string, string | number>>;
    };

export interface StockDoubt {
  readonly kind: "strongerThanFibre" | "weak" | "stiff" | "soft" | "beyondStrength";
  readonly at: StockEntryField;
  readonly values: Readonly<Record<string, string | number>>;
}

export type StockReading =
  | { readonly ok: true; readonly stock: StockDocument; readonly doubts: readonly StockDoubt[] }
  | { readonly ok: false; readonly faults: readonly StockFault[] };

/** The generic stock whose fast pull is taken over, by fibre and form. */
const GENERIC_LIKE: Readonly<Record<string, string>> = {
  "polyester webbing": "polyester-webbing-25",
  "polyamide webbing": "polyamide-webbing-25",
  "hmpe webbing": "hmpe-webbing-25",
  "aramid webbing": "aramid-webbing-25",
  "polyamide rope": "dynamic-rope-10",
};
const likeOf = (fibre: string, form: string): LineStock =>
  GENERIC_STOCKS.get(GENERIC_LIKE[`${fibre} ${form}`] ?? GENERIC_LIKE[`${fibre} webbing`] ?? "polyester-webbing-25")!;

/** Yarn strength [N/tex]; a consultant's published table of synthetic fibre yarns, as the generic webbings rest on. */
const YARN_STRENGTHS: Readonly<Record<string, number>> = { polyester: 0.84, polyamide: 0.84, hmpe: 2.65, aramid: 2.03 };
/** A webbing or rope keeps more than this share of its yarn's strength; less is unusual [-]. */
const LEAST_YARN_SHARE = 0.15;
/** Stiffer or softer than a generic one of its kind by more than this is unusual [-]. */
const UNUSUAL_STIFFNESS_RATIO = 5;

/** `names`: of other own stocks, in use already. */
export function stockFrom(entry: StockEntry, names: readonly string[] = []): StockReading {
  const faults: StockFault[] = [...textFaults(entry, names)];
  const number = (at: "strength" | "mass") => quantity(`stocks[0].${at}`, at, entry[at], faults);
  const strength = number("strength");
  const mass = number("mass");
  if (entry.width.trim() !== "") quantity("stocks[0].width", "width", entry.width, faults);
  const points = pointsOf(entry, faults);
  if (faults.length > 0 || strength === undefined || mass === undefined || !points) return { ok: false, faults };
  const { fibre, form } = entry;
  const like = likeOf(fibre, form);
  const basis = `${entry.basisKind}: ${entry.source.trim()}`;
  const stock: StockDocument = {
    id: idOf(entry.name, names),
    like: like.id,
    name: entry.name.trim(),
    fibre: fibre as LineStock["fibre"],
    form: form as NonNullable<LineStock["form"]>,
    mass: entry.mass.trim(),
    ...(entry.width.trim() === "" ? {} : { width: entry.width.trim() }),
    strength: entry.strength.trim(),
    basis,
    curve: [
      ["0 %", "0 kN"],
      ...entry.loads.map(({ load, stretch }): [string, string] => [stretch.trim(), load.trim()]),
    ],
    branches: fastPull(like, points),
    // One basis for both: it is no better than that of the fast pull, which nobody measured.
    curveBasis: `assumed: ${sayNewRig("own.curveBasis", { basis, like: stockName(like.name) })}`,
  };
  return { ok: true, stock, doubts: doubtsOf(entry, { strength, mass, points, like }) };
}

/** As much stiffer in a fast pull, in proportion to the slow one, as the generic stock. */
function fastPull(like: LineStock, points: readonly PullPoint[]): [string, string][] {
  const [stretch, tension] = points.at(-1)!;
  const share = tension / stretch / (tensionAt(like.curve, stretch) / stretch);
  return like.branches.map(([stiffness, time]) => [`${Number((stiffness * share).toPrecision(3))} N`, `${time} s`]);
}

function textFaults({ name, source }: StockEntry, names: readonly string[]): readonly StockFault[] {
  const taken = names.some((one) => one.trim().toLowerCase() === name.trim().toLowerCase());
  return [
    ...(name.trim() === ""
      ? [{ kind: "nameMissing", at: "name" } as const]
      : fieldFault("stocks[0].name", "name", name)),
    ...(taken ? [{ kind: "nameTaken", at: "name" } as const] : []),
    ...(source.trim() === "" ? [{ kind: "sourceMissing", at: "source" } as const] : []),
  ];
}

function fieldFault(path: string, at: StockEntryField, text: string): readonly StockFault[] {
  const read = readField(path, text);
  return read.ok ? [] : [{ kind: "issue", at, message: read.issue.message }];
}

const UNIT_OF_DIMENSION: Readonly<Record<string, string>> = {
  force: "kN",
  massPerLength: "g/m",
  share: "%",
  length: "mm",
};

/** SI value; undefined with a fault noted. */
function quantity(path: string, at: StockEntryField, text: string, faults: StockFault[]): number | undefined {
  const read = readField(path, text);
  if (read.ok) return read.si;
  const field = fieldAt(path);
  const unit = field?.kind === "quantity" ? UNIT_OF_DIMENSION[field.dimension] : undefined;
  const bare = /^\d+(?:\.\d+)?$/.test(text.trim()) && unit !== undefined;
  faults.push({
    kind: "issue",
    at,
    message: read.issue.message,
    ...(bare ? { remedy: `${text.trim()} ${unit}` } : {}),
  });
  return undefined;
}

function pointsOf({ loads }: StockEntry, faults: StockFault[]): readonly PullPoint[] | undefined {
  if (loads.length < 2) {
    faults.push({ kind: "rowMissing", at: "loads.0.load" });
    return undefined;
  }
  const points = loads.map(({ load, stretch }, i) => {
    const tension = quantity("stocks[0].curve[1][1]", `loads.${i}.load`, load, faults);
    const strain = quantity("stocks[0].curve[1][0]", `loads.${i}.stretch`, stretch, faults);
    return strain === undefined || tension === undefined ? undefined : ([strain, tension] as const);
  });
  const read = points.filter((one) => one !== undefined);
  if (read.length < points.length) return undefined;
  const unordered = read.findIndex(([, tension], i) => tension <= (i > 0 ? read[i - 1]![1] : 0));
  const wrong = backwards(read);
  if (unordered < 0 && !wrong) return read;
  const at = unordered >= 0 ? unordered : read.findIndex(([, tension]) => tension === wrong!.to);
  const values = { load: loads[at]!.load, before: at > 0 ? loads[at - 1]!.load : "0 kN" };
  faults.push({ kind: "backwards", at: `loads.${at}.${unordered >= 0 ? "load" : "stretch"}`, values });
  return undefined;
}

/** A short name of letters and digits, unlike those in use. */
function idOf(name: string, names: readonly string[]): string {
  const short = name
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 50);
  const base = short === "" || GENERIC_STOCKS.has(short) ? `own-${short || "stock"}` : short;
  const used = names.map((one) => idOf(one, []));
  let id = base;
  for (let i = 2; used.includes(id); i++) id = `${base}-${i}`;
  return id;
}

interface Read {
  readonly strength: number;
  readonly mass: number;
  readonly points: readonly PullPoint[];
  readonly like: LineStock;
}

function doubtsOf({ fibre, loads }: StockEntry, { strength, mass, points, like }: Read): readonly StockDoubt[] {
  const share = strength / (mass * 1e6 * YARN_STRENGTHS[fibre]!);
  const [stretch, tension] = points.at(-1)!;
  const stiffness = tension / stretch / (tensionAt(like.curve, stretch) / stretch);
  const values = { share: formatPercent(share), like: like.name };
  const last = `loads.${loads.length - 1}` as const;
  return [
    ...(share > 1 ? [{ kind: "strongerThanFibre", at: "strength", values } as const] : []),
    ...(share < LEAST_YARN_SHARE ? [{ kind: "weak", at: "strength", values } as const] : []),
    ...(stiffness > UNUSUAL_STIFFNESS_RATIO ? [{ kind: "stiff", at: `${last}.stretch`, values } as const] : []),
    ...(stiffness < 1 / UNUSUAL_STIFFNESS_RATIO ? [{ kind: "soft", at: `${last}.stretch`, values } as const] : []),
    ...(tension > strength ? [{ kind: "beyondStrength", at: `${last}.load`, values } as const] : []),
  ];
}

/** Rows to fill in from a curve that was read from a file. */
export const loadRows = (points: readonly PullPoint[]): StockEntry["loads"] =>
  points.map(([stretch, tension]) => ({
    load: `${Number((tension / 1000).toPrecision(4))} kN`,
    stretch: `${Number((stretch * 100).toPrecision(4))} %`,
  }));
