const MOST_JOBS = 4;

/** Runs made at a time while the page is looked at: a phone has four cores that count. */
export const mostJobs = (): number => Math.min(MOST_JOBS, navigator.hardwareConcurrency || 1);

/** While nobody looks, one: the battery and whatever else is on the screen come first. */
export const HIDDEN_JOBS = 1;
