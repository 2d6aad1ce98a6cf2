/** Words around webbings and ropes: found by a few letters, described by their owner, and what is wrong in that. */
import type { LineStock } from "@secondline/rig";
import { tellFault } from "@secondline/words/faults";
import { newRigWords } from "@secondline/words/newRig";
import type { StockFault } from "./ownStock.ts";

const { say, tradeWords } = newRigWords;

/** Every word of the question begins a word of its name or of what the trade calls it. */
export function isFoundBy(stock: LineStock, query: string): boolean {
  const words = `${stock.name} ${tradeWords(stock)}`.toLowerCase().split(/[^\p{L}\p{N}.]+/u);
  const asked = query.toLowerCase().split(/\s+/).filter(Boolean);
  return asked.every((one) => words.some((word) => word.startsWith(one)));
}

export function stockFaultText(fault: StockFault): string {
  if (fault.kind === "issue") return tellFault(fault.message);
  return say(`own.fault.${fault.kind}`, fault.kind === "backwards" ? fault.values : {});
}
