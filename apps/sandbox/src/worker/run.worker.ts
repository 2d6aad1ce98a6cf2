/** A computing thread: makes the runs that it is handed. */
import { serveTasks, type WorkerPort } from "@secondline/runner";

serveTasks(self as unknown as WorkerPort);
