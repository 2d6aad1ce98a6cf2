/** Two webbings in the same section of the same rig at the same time. */
import type { RigIssue } from "@secondline/rig";
import { isBefore, type PlainDate } from "../dates/calendarDate.ts";
import { END_OF_TIME } from "./checkWebbing.ts";
import { fault } from "./faults.ts";
import type { WebbingRecord } from "./record.ts";

export function samePlaceFaults(webbings: readonly WebbingRecord[]): RigIssue[] {
  const stays = webbings.flatMap((webbing, i) => staysOf(webbing, `webbings[${i}]`));
  return stays.flatMap((a, i) => {
    const b = stays
      .slice(0, i)
      .find(
        (other) =>
          other.place === a.place &&
          other.owner !== a.owner &&
          isBefore(a.since, other.until) &&
          isBefore(other.since, a.until),
      );
    if (b === undefined) return [];
    const message = `"${a.webbing}" and "${b.webbing}" hang in the same place at the same time: ${a.place}.`;
    return [fault(a.path, a.place, "one webbing in a section at a time", message)];
  });
}

interface Stay {
  readonly webbing: string;
  /** Path of the webbing: two may have one name. */
  readonly owner: string;
  readonly place: string;
  readonly path: string;
  readonly since: PlainDate;
  readonly until: PlainDate;
}

function staysOf(webbing: WebbingRecord, path: string): Stay[] {
  const stays: Stay[] = [];
  webbing.entries.forEach((entry, i) => {
    const ends = ["rigged", "moved", "takenDown"].includes(entry.event);
    const last = stays.at(-1);
    if (ends && last?.until === END_OF_TIME) stays[stays.length - 1] = { ...last, until: entry.date };
    if (entry.event !== "rigged" && entry.event !== "moved") return;
    const { rig, line, section } = entry.placement;
    const place = `${rig}, ${line} line, section ${section + 1}`;
    const here = { webbing: webbing.name, owner: path, place, path: `${path}.entries[${i}]` };
    stays.push({ ...here, since: entry.date, until: END_OF_TIME });
  });
  return stays;
}
