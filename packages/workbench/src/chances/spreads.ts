/** Spreads as people type them, in percent: "10", "7.5 %". */
import { MOST_SPREAD, type Spreads } from "@secondline/scenarios";
import type { TypedSpreads } from "./chancesDesk.ts";

const PERCENT = /^\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/;

/** The spread that was typed [-]; undefined when it is none. */
export function readSpread(text: string): number | undefined {
  const found = PERCENT.exec(text);
  if (!found) return undefined;
  const spread = Number(found[1]!.replace(",", ".")) / 100;
  return spread <= MOST_SPREAD ? spread : undefined;
}

/** All spreads, or a fault if one cannot be read. */
export function readSpreads(
  typed: TypedSpreads,
): { readonly ok: true; readonly spreads: Spreads } | { readonly ok: false } {
  const entries = Object.entries(typed).map(([id, text]) => [id, readSpread(text)] as const);
  if (entries.some(([, spread]) => spread === undefined)) return { ok: false };
  return { ok: true, spreads: Object.fromEntries(entries) as Spreads };
}
