import { quantity } from "@secondline/words";
import { sayWear } from "@secondline/words/page/wear";

/** "1 month", "14 months": two significant digits. */
export const monthsWords = (months: number): string =>
  sayWear("months.count", { count: quantity.number(Number(months.toPrecision(2))) });
