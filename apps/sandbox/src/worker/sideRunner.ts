import type { RunnerService } from "@secondline/runner";
import { pageRunner } from "./runner.ts";

let runner: RunnerService | undefined;

/** A second computing thread for layouts and lessons, made when it is first asked for: the rig in hand keeps its own. */
export function sideRunner(): RunnerService {
  runner ??= pageRunner();
  return runner;
}
