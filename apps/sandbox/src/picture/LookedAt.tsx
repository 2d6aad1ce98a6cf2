import type { Shape } from "@secondline/figures";
import { Shapes } from "./Shapes.tsx";

interface Props {
  of: readonly Shape[];
  width: number;
  height: number;
  styles: Readonly<Record<string, string>>;
  className?: string | undefined;
  /** What it shows, for those who do not see it. */
  label: string;
}

/** A drawing that is only looked at, as wide as its place. */
export function LookedAt({ of, width, height, styles, className, label }: Props) {
  return (
    <svg className={className} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <Shapes of={of} styles={styles} />
    </svg>
  );
}
