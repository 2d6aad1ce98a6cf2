import type { ChancesService, RunnerService } from "@secondline/runner";
import { pageRunner } from "./runner.ts";

let runner: (RunnerService & ChancesService) | undefined;

/** A second computing thread for layouts, lessons and chances, made when it is first asked for: the rig in hand keeps its own. */
export function sideRunner(): RunnerService & ChancesService {
  runner ??= pageRunner();
  return runner;
}
