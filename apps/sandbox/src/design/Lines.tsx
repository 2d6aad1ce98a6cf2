interface Props {
  of: readonly string[];
  className?: string | undefined;
  id?: string;
  role?: "alert";
  hidden?: boolean;
  "aria-label"?: string;
}

/** Sentences one under the other, as the items of a list. */
export function Lines({ of, ...list }: Props) {
  return (
    <ul {...list}>
      {of.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

/** Sentences each in a paragraph of its own. */
export function Paragraphs({ of, className }: Pick<Props, "of" | "className">) {
  return of.map((text) => (
    <p key={text} className={className}>
      {text}
    </p>
  ));
}
