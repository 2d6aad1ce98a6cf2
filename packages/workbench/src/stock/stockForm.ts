/** The form of a webbing or rope of one's own: its fields in the order in which they are asked, and what a file makes of them. */
import { broughtIn } from "@secondline/words";
import { spokenField } from "@secondline/words/fields";
import { newRigWords } from "@secondline/words/newRig";
import { loadRows, type StockEntry } from "./ownStock.ts";
import { readPull } from "./readPull.ts";

const { say, fileFault } = newRigWords;

type Texts = Exclude<keyof StockEntry, "loads">;
type Options = readonly { readonly value: string; readonly label: string }[];

export interface StockFormField {
  readonly at: Texts;
  readonly label: string;
  /** One of these, where it is not typed. */
  readonly options?: Options;
  readonly placeholder?: string;
}

/** Fibres and forms that there are. */
function optionsOf(name: "fibre" | "form"): Options {
  const field = spokenField(`stocks[0].${name}`);
  return field?.kind === "choice" ? field.options : [];
}

const BASES: Options = ["published", "tested", "common practice", "from memory", "assumed"].map((kind) => ({
  value: kind,
  label: broughtIn(kind),
}));

export const STOCK_FIELDS: readonly StockFormField[] = [
  { at: "name", label: say("own.name") },
  { at: "fibre", label: say("own.fibre"), options: optionsOf("fibre") },
  { at: "form", label: say("own.form"), options: optionsOf("form") },
  { at: "strength", label: say("own.strength"), placeholder: "30 kN" },
  { at: "basisKind", label: say("own.basisKind"), options: BASES },
  { at: "source", label: say("own.source") },
  { at: "mass", label: say("own.mass"), placeholder: "60 g/m" },
  { at: "width", label: say("own.width"), placeholder: say("own.likeGeneric") },
];

/** The entry with the stretch that a test machine recorded in this file, and what is told of the file; read or not. */
export async function withPull(
  entry: StockEntry,
  file: { readonly name: string; readonly text: () => Promise<string> },
): Promise<{ readonly entry: StockEntry; readonly told: string }> {
  const pulled = await file.text().then(readPull, () => undefined);
  if (pulled?.ok) {
    const told = say("own.fileRead", { file: file.name, count: pulled.points.length });
    return { entry: { ...entry, loads: loadRows(pulled.points) }, told };
  }
  const why = pulled ? pulled.faults.map(fileFault).join(" ") : say("file.device");
  return { entry, told: say("file.unread", { file: file.name, why }) };
}
