import { sayWear } from "@secondline/words/page/wear";
import { quantity } from "../words.ts";

/** "1 month", "14 months": two significant digits. */
export const monthsWords = (months: number): string =>
  sayWear("months.count", { count: quantity.number(Number(months.toPrecision(2))) });
