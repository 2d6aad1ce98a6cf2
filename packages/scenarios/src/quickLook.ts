/**
 * What a quick look leaves open, few what-ifs of many on whatever mesh: loads are judged so many times what they are [-].
 * Of the demonstration rigs that hold, the least margin of the full set is up to 7 % below that of the quick look; single
 * parts differ more.
 */
export const QUICK_ALLOWANCE = 1.15;
