import { sayTime } from "@secondline/words/page/time";
import { type PlaybackClock, SPEEDS } from "@secondline/workbench";
import { useClock } from "../clock/useClock.ts";
import { Choice } from "../design/Choice.tsx";

const OPTIONS = SPEEDS.map((speed) => ({
  value: String(speed),
  label: sayTime("playBar.speedOf", { speed, share: Math.round(1 / speed) }),
}));

/** How fast the clock runs; `inline`: inside a bar of words. */
export function SpeedChoice({ clock, inline = false }: { clock: PlaybackClock; inline?: boolean }) {
  const speed = useClock(clock, (state) => state.speed);
  return (
    <Choice<string>
      inline={inline}
      compact
      label={sayTime("playBar.speed")}
      value={String(speed)}
      options={OPTIONS}
      onChange={(value) => clock.setSpeed(SPEEDS.find((known) => String(known) === value) ?? SPEEDS[0])}
    />
  );
}
