/** Which way a key moves what a slider holds: arrows by a step, with Shift and by Page up and down by a large one. */
export interface KeyMove {
  /** To the right and upwards: 1, −1 or 0. */
  readonly across: number;
  readonly up: number;
  readonly isLarge: boolean;
}

const MOVES: Readonly<Record<string, readonly [across: number, up: number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, 1],
  PageDown: [0, -1],
};

/** Undefined for every other key. */
export function keyMove({ key, shiftKey }: { readonly key: string; readonly shiftKey: boolean }): KeyMove | undefined {
  const move = MOVES[key];
  return move && { across: move[0], up: move[1], isLarge: shiftKey || key.startsWith("Page") };
}
