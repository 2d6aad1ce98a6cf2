/** Where a run comes nearest to what is required, and how it is named there. */
export interface WeakPlace {
  readonly part: string;
  readonly text: string;
  /** Of webbing: the place along its natural length from A [-]. */
  readonly share?: number;
}
