/** A computing thread of the command line, bundled beside it. */
import { serveTasksInNode } from "@secondline/runner/node";

serveTasksInNode();
