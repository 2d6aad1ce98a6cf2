/** Requested runs that were not made: somebody stopped them, or they cannot be made. */
import type { ServiceAnswer } from "@secondline/runner";
import { broughtIn } from "@secondline/words";
import { sayRuns } from "@secondline/words/terminal/runs";
import { CommandFailure, EXIT } from "./failure.ts";

export const cancelled = () => new CommandFailure(EXIT.stopped, [sayRuns("cancelled")]);

export const unanswered = ({
  reason,
  message,
}: Extract<ServiceAnswer<unknown>, { readonly ok: false }>): CommandFailure =>
  reason === "cancelled" ? cancelled() : new CommandFailure(EXIT.audit, [broughtIn(message)]);
