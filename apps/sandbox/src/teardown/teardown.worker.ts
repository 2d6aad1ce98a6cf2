/** Plans a teardown, and looks at what it taught, off the page's thread. */
import { expose } from "comlink";
import { learnt, type Planner, plan } from "./planner.ts";

const planner: Planner = { plan, learnt };
expose(planner);
