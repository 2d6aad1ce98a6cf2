/** What the groups and lists of a rig document are called, for messages and headings. */
const GROUP_NAMES: Readonly<Record<string, string>> = {
  "": "Rig",
  stocks: "Own webbings and ropes",
  anchorA: "Anchor A",
  anchorB: "Anchor B",
  "anchor.points": "Rock points",
  "anchor.hardware": "Slings and hardware",
  main: "Main line",
  backup: "Backup",
  "line.sections": "Sections",
  "line.sections[].wear": "Wear",
  "line.endA": "End at anchor A",
  "line.endB": "End at anchor B",
  "backup.connections": "Connections",
  "backup.tapes": "Tapes",
  rings: "Leash rings",
  leash: "Leash",
  "leash.knots": "Knots",
  harness: "Harness tie-in",
  walker: "Walker",
  ground: "Ground profile",
  condition: "Condition",
  own: "Own judgement",
};

/** The name of the group or list at a path, such as "Main line"; undefined when there is none of that name. */
export function groupName(path: string): string | undefined {
  const pattern = path.replace(/\[\d+\]/g, "[]");
  const shared = pattern.replace(/^anchor[AB]\./, "anchor.").replace(/^(?:main|backup)\./, "line.");
  const last = /(?:^|\.)(condition|own)$/.exec(pattern)?.[1] ?? pattern;
  return GROUP_NAMES[pattern] ?? GROUP_NAMES[shared] ?? GROUP_NAMES[last];
}
