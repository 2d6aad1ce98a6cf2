/** The computing thread: offers a runner to the page. */
import { exposeRunner } from "@secondline/runner";

exposeRunner();
