/** Figures of this call, beside those that are kept. */
import { type Figures, readBaseline } from "./baseline.ts";

export const digits = (value: number, count = 1): string => value.toFixed(count);

export interface Notes {
  readonly figures: Figures;
  /** Notes a figure; returns its ratio to the kept one as text. */
  readonly note: (name: string, value: number) => string;
}

export function takeNotes(): Notes {
  const kept = readBaseline()?.figures;
  const figures: Record<string, number> = {};
  return {
    figures,
    note(name, value) {
      figures[name] = value;
      const before = kept?.[name];
      return before === undefined ? "–" : digits(value / before, 2);
    },
  };
}
