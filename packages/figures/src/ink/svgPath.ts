/** Paths, colours and letters as SVG writes them. */

const FULL_TURN = 2 * Math.PI;

/** A growing path, moved and turned into the page's frame. */
export class Path {
  data = "";
  place = { x: 0, y: 0, turn: 0 };

  begin(): void {
    this.data = "";
  }

  placed(x: number, y: number): readonly [number, number] {
    const { turn } = this.place;
    if (turn === 0) return [x + this.place.x, y + this.place.y];
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    return [this.place.x + c * x - s * y, this.place.y + s * x + c * y];
  }

  translate(x: number, y: number): void {
    const [px, py] = this.placed(x, y);
    this.place = { ...this.place, x: px, y: py };
  }

  rotate(angle: number): void {
    this.place = { ...this.place, turn: this.place.turn + angle };
  }

  move(x: number, y: number): void {
    this.add("M", x, y);
  }

  /** The first point of a path is where it begins, as on a canvas. */
  line(x: number, y: number): void {
    this.add(this.data === "" ? "M" : "L", x, y);
  }

  rect(x: number, y: number, width: number, height: number): void {
    this.move(x, y);
    this.line(x + width, y);
    this.line(x + width, y + height);
    this.line(x, y + height);
    this.close();
  }

  /** Clockwise on the page, from angle to angle [rad], with a straight line to its beginning. */
  arc(x: number, y: number, radius: number, from: number, to: number): void {
    const whole = to - from >= FULL_TURN;
    const sweep = whole ? FULL_TURN : (((to - from) % FULL_TURN) + FULL_TURN) % FULL_TURN;
    this.line(x + radius * Math.cos(from), y + radius * Math.sin(from));
    // A whole circle has no two ends: it is drawn in halves.
    const pieces = whole ? 2 : 1;
    for (let i = 1; i <= pieces; i++) {
      const angle = from + (sweep * i) / pieces;
      const [px, py] = this.placed(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
      const large = sweep / pieces > Math.PI ? 1 : 0;
      this.data += `A${pathNumber(radius)} ${pathNumber(radius)} 0 ${large} 1 ${pathNumber(px)} ${pathNumber(py)}`;
    }
  }

  close(): void {
    if (this.data !== "") this.data += "Z";
  }

  private add(letter: string, x: number, y: number): void {
    const [px, py] = this.placed(x, y);
    this.data += `${letter}${pathNumber(px)} ${pathNumber(py)}`;
  }
}

/** To a hundredth of a pixel, without noughts at its end. */
export function pathNumber(value: number): string {
  return String(Number(value.toFixed(2)));
}

/**
 * A colour as an attribute: `#rrggbb`, `#rrggbbaa` or `rgb(r g b)` as hex, because many programs that read SVG know neither of
 * the latter. The opacity is an attribute of its own.
 */
export function paintOf(attribute: string, colour: string, alpha: number): string {
  if (colour === "transparent") return `${attribute}="none"`;
  const [, r, g, b] = /^rgb\((\d+)[ ,]+(\d+)[ ,]+(\d+)\)$/.exec(colour) ?? [];
  const hex =
    r === undefined ? colour : `#${[r, g, b].map((part) => Number(part).toString(16).padStart(2, "0")).join("")}`;
  if (!/^#([\da-f]{6}|[\da-f]{8})$/i.test(hex)) throw new Error(`a drawing cannot use the colour "${colour}"`);
  const through = hex.length === 9 ? Number.parseInt(hex.slice(7), 16) / 255 : 1;
  const seen = alpha * through;
  return `${attribute}="${hex.slice(0, 7)}"${seen >= 1 ? "" : ` ${attribute.replace("-color", "")}-opacity="${pathNumber(seen)}"`}`;
}

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text inside of XML; signs that XML forbids are left out. */
export function escapeXml(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to leave out
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "")
      .replace(/[&<>"]/g, (sign) => ESCAPES[sign]!)
  );
}
