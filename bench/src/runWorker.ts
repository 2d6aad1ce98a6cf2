/** A computing thread for the assessments that are timed. */
import { serveTasksInNode } from "@secondline/runner/node";

serveTasksInNode();
