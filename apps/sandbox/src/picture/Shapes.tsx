import type { Paint, Shape, Tile } from "@secondline/figures";
import type { CSSProperties } from "react";

interface Props {
  of: readonly Shape[];
  /** The style rules that the shapes name. */
  styles?: Readonly<Record<string, string>>;
  /** Stands before the names of patterns and clips, so that several drawings can be on one page. */
  id?: string;
}

/** Shapes of a description as elements of the drawing around them. */
export function Shapes({ of, styles = {}, id = "" }: Props) {
  return of.map((shape, place) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a shape is known by its place in the drawing
    <Drawn key={place} shape={shape} styles={styles} id={id} />
  ));
}

function Drawn({ shape, styles, id }: Required<Omit<Props, "of">> & { shape: Shape }) {
  const { styled, fill, stroke, clip, ...rest } = shape;
  const look = {
    className:
      styled &&
      [styled]
        .flat()
        .map((name) => styles[name])
        .join(" "),
    fill: colourOf(fill, id),
    stroke: colourOf(stroke, id),
    clipPath: clip && `url(#${id}-${clip})`,
  };
  switch (rest.kind) {
    case "group": {
      const { kind: _, inside, title, unspoken, ...place } = rest;
      return (
        <g {...look} {...place} aria-hidden={unspoken}>
          {title !== undefined && <title>{title}</title>}
          <Shapes {...{ of: inside, styles, id }} />
        </g>
      );
    }
    case "text": {
      const { kind: _, words, ...place } = rest;
      // The style sheet gives letters their colour, which only a style of their own overrides.
      const style = look.fill === undefined ? {} : { style: { fill: look.fill } as CSSProperties };
      return (
        <text {...look} {...place} {...style}>
          {words}
        </text>
      );
    }
    default: {
      const { kind: Element, ...place } = rest;
      return <Element {...look} {...place} />;
    }
  }
}

function colourOf(paint: Paint | undefined, id: string): string | undefined {
  if (paint === undefined || paint === "none" || paint === "transparent") return paint;
  if (typeof paint === "object") return `url(#${id}-${paint.pattern})`;
  return `var(--${paint.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)})`;
}

/** The patterns that shapes of a drawing are filled with. */
export function Tiles({ of, id }: { of: readonly Tile[]; id: string }) {
  return (
    <defs>
      {of.map(({ name, size, d, colour, strokeWidth }) => (
        <pattern key={name} id={`${id}-${name}`} width={size} height={size} patternUnits="userSpaceOnUse">
          <path d={d} stroke={colourOf(colour, id)} fill="none" strokeLinecap="round" {...{ strokeWidth }} />
        </pattern>
      ))}
    </defs>
  );
}
