/**
 * Calls `action` at once, then at most every `interval` milliseconds, and once more after the last call,
 * so that the final value is never missed.
 */
export function throttled(
  action: () => void,
  interval: number,
): { readonly call: () => void; readonly cancel: () => void } {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let again = false;

  function later(): void {
    timer = null;
    if (!again) return;
    again = false;
    action();
    timer = setTimeout(later, interval);
  }

  return {
    call() {
      if (timer !== null) {
        again = true;
        return;
      }
      action();
      timer = setTimeout(later, interval);
    },
    cancel() {
      if (timer !== null) clearTimeout(timer);
      timer = null;
      again = false;
    },
  };
}
