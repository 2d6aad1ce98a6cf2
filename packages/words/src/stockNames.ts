/** Names of webbings and ropes: those of the library in the language, others as their owner wrote them. */
import { GENERIC_STOCKS, type LineStock } from "@secondline/rig";
import { broughtIn } from "./broughtEnglish.ts";

const LIBRARY: ReadonlySet<string> = new Set([...GENERIC_STOCKS.values()].map(({ name }) => name));

export const stockName = (name: string): string => (LIBRARY.has(name) ? broughtIn(name) : name);

/** A material by its name where a log has the id of a webbing or rope. `own`: those of the open rig. */
export function materialName(material: string, own: readonly LineStock[] = []): string {
  const stock = own.find(({ id }) => id === material) ?? GENERIC_STOCKS.get(material);
  return stock ? stockName(stock.name) : material;
}
