/** Places labels beside their points so that none covers another: the lesser one moves, shortens, or hides. */

export interface Label {
  active: boolean;
  /** The point it belongs to [px]. */
  x: number;
  y: number;
  /** Kept free around the point [px]. */
  gap: number;
  /** Widths of the long and the short text; 0: no short text [px]. */
  width: number;
  shortWidth: number;
  height: number;
  /** Priority: the label with the higher one keeps its place. */
  priority: number;
  /** A label whose point is out of the picture stays at the picture's rim instead of vanishing. */
  clings: boolean;
  /** Largest distance from the point, besides `gap`, if there is no room beside the point [px]. */
  farthest: number;
  /** The label is shortened before it stands off its point: a dimension belongs at its line. */
  shortFirst: boolean;
  /** Other points that the label may belong to, x and y each, in the order tried; empty for most labels [px]. */
  readonly spots: Float64Array;
  /** The side that is tried first at each of them. */
  readonly spotSides: Uint8Array;
  spotCount: number;
  /** Result: upper left corner, which text (0 long, 1 short, −1 hidden), side of the point. */
  left: number;
  top: number;
  shown: -1 | 0 | 1;
  slot: number;
}

export interface LabelEdges {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Most points of one label [-]. */
export const MOST_SPOTS = 8;

export function createLabel(): Label {
  return {
    active: false,
    x: 0,
    y: 0,
    gap: 8,
    width: 0,
    shortWidth: 0,
    height: 0,
    priority: 0,
    clings: false,
    farthest: 0,
    shortFirst: false,
    spots: new Float64Array(2 * MOST_SPOTS),
    spotSides: new Uint8Array(MOST_SPOTS),
    spotCount: 0,
    left: 0,
    top: 0,
    shown: -1,
    slot: 0,
  };
}

/** Free space between two labels and to the picture's rim [px]. */
const LABEL_CLEARANCE = 4;
/** Sides of the point, in the order tried: right, left, above, below, then the corners. */
const LABEL_SLOTS: readonly (readonly [h: number, v: number])[] = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
];

/** Indices of sides. */
export const LABEL_SIDES = { right: 0, left: 1, above: 2, below: 3, rightAbove: 4, rightBelow: 6 } as const;

/** Lays out all labels in a picture of the given size, around `obstacles`. */
export function layOutLabels(
  labels: readonly Label[],
  order: Uint16Array,
  width: number,
  height: number,
  obstacles: readonly LabelEdges[],
): void {
  sortByPriority(labels, order);
  const picture: Picture = { labels, order, placed: 0, width, height, obstacles };
  for (let k = 0; k < labels.length; k++) {
    picture.placed = k;
    const label = labels[order[k]!]!;
    label.shown = -1;
    if (!label.active) continue;
    for (let spot = 0; spot < Math.max(label.spotCount, 1) && label.shown === -1; spot++) {
      if (label.spotCount > 0) {
        label.x = label.spots[2 * spot]!;
        label.y = label.spots[2 * spot + 1]!;
        label.slot = label.spotSides[spot]!;
      }
      const outside = label.x < 0 || label.y < 0 || label.x > width || label.y > height;
      if (outside && !label.clings) continue;
      const near = label.shortFirst ? 0 : label.farthest;
      const isPlaced = place(label, near, 0, picture) || (label.shortWidth > 0 && place(label, near, 1, picture));
      if (!isPlaced && near < label.farthest) place(label, label.farthest, 0, picture);
    }
  }
}

/** Step of the distances that a label tries when it may stand off its point [px]. */
const STAND_OFF_STEP = 24;

/** Boxes that a label must keep clear of. */
interface Picture {
  readonly labels: readonly Label[];
  readonly order: Uint16Array;
  /** Number of labels, in that order, that have their place already or are hidden [-]. */
  placed: number;
  readonly width: number;
  readonly height: number;
  readonly obstacles: readonly LabelEdges[];
}

function place(label: Label, farthest: number, variant: 0 | 1, picture: Picture): boolean {
  for (let off = 0; off <= farthest; off += STAND_OFF_STEP) {
    if (placeAt(label, label.gap + off, variant, picture)) return true;
  }
  return false;
}

function placeAt(label: Label, gap: number, variant: 0 | 1, picture: Picture): boolean {
  const { width, height } = picture;
  const w = variant === 0 ? label.width : label.shortWidth;
  const h = label.height;
  for (let i = 0; i < LABEL_SLOTS.length; i++) {
    // A label's last side is tried first, so that labels do not hop about.
    const slot = i === 0 ? label.slot : i <= label.slot ? i - 1 : i;
    const [sx, sy] = LABEL_SLOTS[slot]!;
    let left = label.x + sx * gap + (sx - 1) * 0.5 * w;
    let top = label.y + sy * gap + (sy - 1) * 0.5 * h;
    if (label.clings) {
      left = Math.min(Math.max(left, LABEL_CLEARANCE), width - w - LABEL_CLEARANCE);
      top = Math.min(Math.max(top, LABEL_CLEARANCE), height - h - LABEL_CLEARANCE);
      // If the rim pushes the label back onto its own mark, another side is better.
      const room = label.gap - LABEL_CLEARANCE;
      const overMark =
        left < label.x + room && left + w > label.x - room && top < label.y + room && top + h > label.y - room;
      if (overMark) continue;
    }
    if (
      left < LABEL_CLEARANCE ||
      top < LABEL_CLEARANCE ||
      left + w > width - LABEL_CLEARANCE ||
      top + h > height - LABEL_CLEARANCE
    )
      continue;
    if (hits(left, top, w, h, picture)) continue;
    label.left = left;
    label.top = top;
    label.shown = variant;
    label.slot = slot;
    return true;
  }
  return false;
}

function hits(left: number, top: number, w: number, h: number, { labels, order, placed, obstacles }: Picture): boolean {
  for (const box of obstacles) {
    if (
      left < box.right + LABEL_CLEARANCE &&
      left + w > box.left - LABEL_CLEARANCE &&
      top < box.bottom + LABEL_CLEARANCE &&
      top + h > box.top - LABEL_CLEARANCE
    ) {
      return true;
    }
  }
  for (let k = 0; k < placed; k++) {
    const other = labels[order[k]!]!;
    if (other.shown === -1) continue;
    const ow = other.shown === 0 ? other.width : other.shortWidth;
    const apart =
      left >= other.left + ow + LABEL_CLEARANCE ||
      left + w <= other.left - LABEL_CLEARANCE ||
      top >= other.top + other.height + LABEL_CLEARANCE ||
      top + h <= other.top - LABEL_CLEARANCE;
    if (!apart) return true;
  }
  return false;
}

/** Insertion sort, in place: the order hardly changes from frame to frame. */
function sortByPriority(labels: readonly Label[], order: Uint16Array): void {
  for (let k = 1; k < labels.length; k++) {
    const item = order[k]!;
    let at = k - 1;
    while (at >= 0 && labels[order[at]!]!.priority < labels[item]!.priority) {
      order[at + 1] = order[at]!;
      at--;
    }
    order[at + 1] = item;
  }
}
