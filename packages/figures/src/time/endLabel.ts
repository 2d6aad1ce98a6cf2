/** A name at the end of its trace or beside its area, with the value under the cursor. */
export interface EndLabel {
  readonly key: string;
  readonly name: string;
  readonly colour: string;
  /** Dash of the line in the sample before the name; null: an area's swatch, drawn with `fill`. */
  readonly dash: readonly number[] | null;
  readonly fill?: string;
  readonly width: number;
  /** Height of the trace's end, from the top of the plot area [px]. */
  readonly y: number;
  /** Rank of the label: if there is no room for all, the greatest stay. */
  readonly rank: number;
  readonly valueAt: (time: number) => number | null;
  /** The effect of a press, in words; absent: none. */
  readonly goTo?: { readonly words: string; readonly time: number };
}

/** The `room` greatest, in the order they came in. */
export function keptLabels(labels: readonly EndLabel[], room: number): readonly EndLabel[] {
  if (labels.length <= room) return labels;
  const kept = new Set([...labels].sort((a, b) => b.rank - a.rank).slice(0, room));
  return labels.filter((label) => kept.has(label));
}
