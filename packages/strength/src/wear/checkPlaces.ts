/** Two webbings in the same section of the same rig at the same time. */
import type { FactValue } from "@secondline/rig";
import { isBefore, type PlainDate } from "../dates/calendarDate.ts";
import { END_OF_TIME } from "./checkWebbing.ts";
import { type RecordIssue, recordFault } from "./faults.ts";
import type { WebbingRecord } from "./record.ts";
import { recordFact } from "./recordFacts.ts";

export function samePlaceFaults(webbings: readonly WebbingRecord[]): RecordIssue[] {
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
    const message = recordFact("webbing.samePlace", { first: a.webbing, second: b.webbing, place: a.told });
    return [recordFault(a.path, a.told, recordFact("expected.oneWebbing", {}), message)];
  });
}

interface Stay {
  readonly webbing: string;
  /** Path of the webbing, since two webbings may have one name. */
  readonly owner: string;
  /** Rig, line and section as one key. */
  readonly place: string;
  readonly told: FactValue;
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
    const place = JSON.stringify([rig, line, section]);
    const told = recordFact(`place.${line}`, { rig, section: section + 1 });
    const here = { webbing: webbing.name, owner: path, place, told, path: `${path}.entries[${i}]` };
    stays.push({ ...here, since: entry.date, until: END_OF_TIME });
  });
  return stays;
}
