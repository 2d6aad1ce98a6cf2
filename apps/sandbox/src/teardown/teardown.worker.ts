/** Plans a teardown off the page's thread. */
import { expose } from "comlink";
import { type Planner, plan } from "./planner.ts";

const planner: Planner = { plan };
expose(planner);
