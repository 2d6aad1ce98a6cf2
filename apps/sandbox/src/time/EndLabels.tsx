import { type EndLabel, laidNames, type PlotFrame } from "@secondline/figures/time";
import type { PlaybackClock } from "@secondline/workbench";
import { useClock } from "../clock/useClock.ts";
import styles from "./Plot.module.css";

interface Props {
  readonly labels: readonly EndLabel[];
  readonly clock: PlaybackClock;
  readonly frame: PlotFrame;
  readonly format: (value: number) => string;
  readonly compact: boolean;
  readonly highlight: string | null;
  readonly onHighlight?: (key: string | null) => void;
}

export function EndLabels({ labels: all, clock, frame, format, compact, highlight, onHighlight }: Props) {
  const { size, leader, names } = laidNames(all, frame, compact);
  return (
    <div
      className={styles.ends}
      data-compact={compact}
      style={{ left: frame.left + frame.width, top: frame.top, width: frame.gutter, height: frame.height }}
    >
      <svg className={styles.leaders} width={leader} height={frame.height} aria-hidden="true">
        {names.map(({ label, centre }) => (
          <path key={label.key} d={`M1 ${label.y}L${leader - 3} ${centre}`} stroke={label.colour} />
        ))}
      </svg>
      {names.map(({ label, centre }) => (
        <div
          key={label.key}
          className={styles.end}
          data-faded={highlight !== null && highlight !== label.key}
          style={{ top: centre - size / 2, height: size, left: leader, color: label.colour }}
          onPointerEnter={() => onHighlight?.(label.key)}
          onPointerLeave={() => onHighlight?.(null)}
        >
          <LabelName label={label} clock={clock} compact={compact} onHighlight={onHighlight} />
          <CursorValue label={label} clock={clock} format={format} />
        </div>
      ))}
    </div>
  );
}

type NameProps = Pick<Props, "clock" | "compact"> & {
  readonly label: EndLabel;
  readonly onHighlight: Props["onHighlight"] | undefined;
};

function LabelName({ label, clock, compact, onHighlight }: NameProps) {
  const { goTo } = label;
  const name = (
    <>
      <Swatch label={label} />
      {label.name}
    </>
  );
  // Too small to be pressed with a thumb: there the "Go to" menu leads to the peaks.
  if (!goTo || compact) return <span className={styles.endName}>{name}</span>;
  return (
    <button
      type="button"
      className={styles.endName}
      title={goTo.words}
      aria-label={goTo.words}
      onClick={() => clock.seek(goTo.time)}
      onFocus={() => onHighlight?.(label.key)}
      onBlur={() => onHighlight?.(null)}
    >
      {name}
    </button>
  );
}

function Swatch({ label }: { label: EndLabel }) {
  return (
    <svg className={styles.swatch} width={18} height={10} aria-hidden="true">
      {label.dash === null ? (
        <rect x={0.5} y={0.5} width={17} height={9} fill={label.fill} stroke={label.colour} />
      ) : (
        <path d="M0 5H18" stroke={label.colour} strokeWidth={label.width} strokeDasharray={label.dash.join(" ")} />
      )}
    </svg>
  );
}

function CursorValue({ label, clock, format }: Pick<Props, "clock" | "format"> & { label: EndLabel }) {
  const value = useClock(clock, ({ time }) => label.valueAt(time));
  return <span className={styles.endValue}>{value === null ? "–" : format(value)}</span>;
}
