import type { AssessmentIssue } from "@secondline/scenarios";
import { tellFault } from "@secondline/words/faults";

/** Why record, tests and rig do not fit together. */
export function Misfits({ issues }: { issues: readonly AssessmentIssue[] }) {
  return (
    <ul>
      {issues.map(({ path, message }) => (
        <li key={`${path} ${message.code}`}>{tellFault(message)}</li>
      ))}
    </ul>
  );
}
