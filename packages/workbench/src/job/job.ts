/** How far something is that takes a while: the one shape for a fall, a search, a sweep, dates and everything else that is computed. */
export type Job<T, P = undefined> =
  | { readonly kind: "idle" }
  /** Asked for; it begins when the changes have come to rest. */
  | { readonly kind: "waiting" }
  | { readonly kind: "busy"; readonly progress: P }
  | { readonly kind: "stopped" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "done"; readonly value: T };

/** What a task came to; errors come as data. */
export type TaskAnswer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly reason: "cancelled" | "failed"; readonly message: string };

/** The answer of a task that finds, between two of its steps, that it was stopped. */
export const STOPPED: TaskAnswer<never> = { ok: false, reason: "cancelled", message: "" };

export interface StoppableTask<T, P = undefined> {
  /** Progress at the beginning. */
  readonly begun: P;
  /** `goesOn`: false once the task was stopped or another took its place; what it tells and answers then is dropped. */
  readonly run: (tell: (progress: P) => void, goesOn: () => boolean) => Promise<TaskAnswer<T>>;
  /** Called once when the task is stopped, or another takes its place, before it has answered. */
  readonly cancel: () => void;
}
