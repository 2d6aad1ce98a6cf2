/** Why a request has no answer, as data: a code for programs, a message for people. */
import type { ChancesImpossible, NoChances } from "@secondline/scenarios";

/**
 * - `cancelled`: the caller took the request back, or made another one under the same id.
 * - `options`: the request has a fault; the message tells the expected form.
 * - `noChances`: this what-if has no chances; `why` gives the reason as a fact.
 * - `workerLost`: threads stopped again and again, or a thread did not respond.
 * - `noWorker`: no thread could be started.
 * - `failed`: anything else, such as a rig at rest without an equilibrium.
 */
export type FailureCode = "cancelled" | "options" | "noChances" | "workerLost" | "noWorker" | "failed";

export interface Failure {
  readonly reason: "cancelled" | "failed";
  readonly code: FailureCode;
  readonly message: string;
  readonly why?: NoChances;
}

export type Failed = { readonly ok: false } & Failure;

export const CANCELLED: Failed = { ok: false, reason: "cancelled", code: "cancelled", message: "Cancelled." };

export const failed = (code: Exclude<FailureCode, "cancelled">, message: string): Failed => ({
  ok: false,
  reason: "failed",
  code,
  message,
});

/** A thrown error, as data. */
export function failureOf(error: unknown): Failed {
  if (saysWhy(error)) return { ...failed("noChances", error.message), why: error.why };
  return failed(error instanceof RangeError ? "options" : "failed", messageOf(error));
}

/** Tells the error by its fields. Its class would bring along the code of chances, which few requests need. */
const saysWhy = (error: unknown): error is ChancesImpossible => error instanceof Error && "why" in error;

export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
