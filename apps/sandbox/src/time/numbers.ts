/** Other names of the formatters in words, for layouts and files until they use those. */
import { quantity } from "@secondline/words";

export const inKilonewtons = quantity.load;
export const kilonewtonDigits = quantity.loadIn;
export const inSeconds = (second: number, decimals?: number): string => quantity.seconds(second, decimals);
