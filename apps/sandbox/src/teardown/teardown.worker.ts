/** Plans a teardown, and looks at what it taught, off the page's thread. */

import { learnt, type Planner, plan } from "@secondline/workbench";
import { expose } from "comlink";

const planner: Planner = { plan, learnt };
expose(planner);
