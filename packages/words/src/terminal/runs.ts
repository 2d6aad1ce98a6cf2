/** Says the sentences while runs are made, and after they were stopped. */
import { saying } from "../saying.ts";
import { RUNS_ENGLISH } from "./runsEnglish.ts";

export const sayRuns = saying(RUNS_ENGLISH);
