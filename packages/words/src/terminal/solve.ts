/** Says the sentences on a problem that the engine alone solved. */
import { saying } from "../saying.ts";
import { SOLVE_ENGLISH } from "./solveEnglish.ts";

export const saySolve = saying(SOLVE_ENGLISH);
