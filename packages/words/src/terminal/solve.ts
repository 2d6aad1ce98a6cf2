/** Says what the engine alone made of a problem. */
import { saying } from "../saying.ts";
import { SOLVE_ENGLISH } from "./solveEnglish.ts";

export const saySolve = saying(SOLVE_ENGLISH);
