/** A straight map from a quantity to pixels and back. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly px: (value: number) => number;
  readonly value: (px: number) => number;
  /** Pixels to one of the quantity. */
  readonly perUnit: number;
}

export function scaleOf(from: number, to: number, start: number, end: number): Scale {
  const slope = (end - start) / (to - from);
  return {
    from,
    to,
    px: (value) => start + (value - from) * slope,
    value: (px) => from + (px - start) / slope,
    perUnit: slope,
  };
}
