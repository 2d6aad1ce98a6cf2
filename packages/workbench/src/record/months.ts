import { formatRatio } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";

/** "1 month", "14 months": rounded up. */
export const monthsWords = (months: number): string => sayWear("months.count", { count: formatRatio(months, "up") });
