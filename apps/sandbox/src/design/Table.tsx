import type { ReactNode } from "react";

interface Props {
  heads: readonly string[];
  /** Texts cell by cell; where the first names its row, `isNamed`. */
  rows: readonly (readonly ReactNode[])[];
  isNamed?: boolean;
  className?: string | undefined;
  /** Said of the table to those who do not see it. */
  label?: string;
  caption?: ReactNode;
  /** The heads are for those who do not see the table. */
  areHeadsHidden?: boolean;
  isLastHeadHidden?: boolean;
  /** So many cells at the beginning of a row are numbers. */
  numbers?: number;
  /** Rows that are marked. */
  areMarked?: readonly boolean[];
}

/** A plain table. Every cell knows its head, so that a narrow screen can show each row as a card. */
export function Table({
  heads,
  rows,
  isNamed = false,
  className,
  label,
  caption,
  numbers = 0,
  areMarked,
  ...hidden
}: Props) {
  return (
    <table className={className} aria-label={label}>
      {caption}
      <thead className={hidden.areHeadsHidden ? "visually-hidden" : undefined}>
        <tr>
          {heads.map((head, i) => (
            <th key={head} scope="col">
              {hidden.isLastHeadHidden && i === heads.length - 1 ? (
                <span className="visually-hidden">{head}</span>
              ) : (
                head
              )}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((cells, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place
          <tr key={place} data-marked={areMarked?.[place] || undefined}>
            {cells.map((cell, i) =>
              isNamed && i === 0 ? (
                <th key={heads[i]} scope="row">
                  {cell}
                </th>
              ) : (
                <td key={heads[i]} data-head={heads[i]} data-number={i < numbers || undefined}>
                  {cell}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
