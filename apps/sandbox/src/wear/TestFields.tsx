import { draftMessages, readDraft, type TestDraft, testFormFields, typedIn } from "@secondline/workbench/record";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";

/** All that can be written down about one break test. */
export function TestFields({ draft, onDraft }: { draft: TestDraft; onDraft: (draft: TestDraft) => void }) {
  const read = readDraft(draft);
  return testFormFields(draft.fields).map((field) => {
    const { column, label, hint } = field;
    const value = draft.fields[column];
    const onChange = (next: string) => onDraft(typedIn(draft, column, next));
    if (field.kind === "choice") {
      const { options, fallback } = field;
      return <Choice key={column} value={value ?? fallback} {...{ label, options, onChange }} />;
    }
    return (
      <TextField
        key={column}
        type={field.kind}
        value={value ?? ""}
        messages={draftMessages(draft, read, column)}
        {...{ label, hint, onChange }}
      />
    );
  });
}
