/** The place at which a run comes nearest to the required margin, and its name. */
export interface WeakPlace {
  readonly part: string;
  readonly text: string;
  /** For webbing: the place along its natural length from A [-]. */
  readonly share?: number;
}
