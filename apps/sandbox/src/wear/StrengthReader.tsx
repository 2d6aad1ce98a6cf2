import type { Scale } from "@secondline/figures";
import type { StrengthZone } from "@secondline/strength";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import { weakest, zoneWords } from "@secondline/workbench/record";
import { type ReactNode, useRef } from "react";
import { quantity } from "../words.ts";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";

interface Props {
  x: Scale;
  y: Scale;
  zones: readonly StrengthZone[];
  worst: StrengthZone | undefined;
  top: number;
  height: number;
  /** Place that is read off [m]. */
  read: number | undefined;
  onRead: (place: number) => void;
}

/** A line to read off what it holds at a place; starts at the weakest one, or in the middle, and stays in sight. */
export function ReadOff({ x, y, zones, top, height, read, onRead, worst }: Props) {
  const first = zones[0];
  const last = zones.at(-1);
  const weak = worst ? (worst.from + worst.to) / 2 : 0;
  const start = read ?? (weak < x.from || weak > x.to ? (x.from + x.to) / 2 : weak);
  if (!first || !last) return null;
  const [min, max] = [Math.max(first.from, x.from), Math.min(last.to, x.to)];
  const place = Math.min(Math.max(start, min), max);
  const here = weakest(zones.filter((zone) => zone.from <= place && place <= zone.to)) ?? first;
  const base = y.px(0);
  return <Reader {...{ x, place, here, base, top, height, onRead }} min={min} max={max} shown={read !== undefined} />;
}

interface ReaderProps {
  x: Scale;
  place: number;
  here: StrengthZone;
  base: number;
  top: number;
  height: number;
  min: number;
  max: number;
  shown: boolean;
  onRead: (place: number) => void;
}

function Reader({ x, place, here, base, top, height, min, max, shown, onRead }: ReaderProps) {
  const at = x.px(place);
  const right = at < (x.px(x.from) + x.px(x.to)) / 2;
  const clamped = (value: number) => onRead(Math.min(Math.max(value, min), max));
  const words = `${formatLength(place)}: ${zoneWords(here)}`;
  return (
    <>
      <Moving {...{ place, clamped, min, max, words }} perUnit={(x.px(x.to) - x.px(x.from)) / (x.to - x.from)}>
        <rect x={at - 12} y={top} width={24} height={height + 22} fill="transparent" />
        <rect className={styles.focus} x={at - 9} y={base - 9} width={18} height={18} rx="9" />
        {shown && <path d={`M${at} ${top}V${base}`} stroke="var(--soft-ink)" strokeWidth="1" />}
        <circle cx={at} cy={base} r="6" fill="var(--raised)" stroke="var(--accent)" strokeWidth="2" />
      </Moving>
      {shown && (
        <text className={styles.halo} x={right ? at + 8 : at - 8} y={top + 14} textAnchor={right ? "start" : "end"}>
          {sayWear("strengthReader.middle", {
            place: formatLength(place),
            strength: quantity.strength(here.strength5),
            middle: quantity.strength(here.strength),
            reason: here.reason,
          })}
        </text>
      )}
    </>
  );
}

function Moving({
  place,
  clamped,
  min,
  max,
  words,
  perUnit,
  children,
}: {
  place: number;
  clamped: (value: number) => void;
  min: number;
  max: number;
  words: string;
  perUnit: number;
  children: ReactNode;
}) {
  const start = useRef(place);
  return (
    <Grip
      label={sayWear("strengthReader.readOff")}
      text={words}
      value={place}
      step={0.1}
      bigStep={1}
      onBegin={() => {
        start.current = place;
      }}
      onBy={(by) => clamped(start.current + by)}
      {...{ min, max, perUnit }}
    >
      {children}
    </Grip>
  );
}
