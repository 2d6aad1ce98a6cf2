import { formatForce, formatLength, formatPercent, formatRatio } from "@secondline/rig";
import type { Basis, Outcome, PartOutcome } from "@secondline/scenarios";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { BasisNote } from "./BasisNote.tsx";
import styles from "./Reasons.module.css";

/** Why a part's margin is what it is: the load and its what-if, the strength factor by factor, the basis of each. */
export function Reasons({ part, outcome }: { part: PartOutcome; outcome: Outcome }) {
  const { chooseWhatIf } = useActions();
  const chosen = useSandbox((state) => state.session.whatIf);
  const worst = outcome.whatIfs[part.whatIf];
  const ratedBasis = basisOfRated(part);
  return (
    <div className={styles.reasons}>
      <p>
        {formatForce(part.load)}
        {part.loadUncertainty !== undefined && ` ± ${formatForce(part.loadUncertainty)}`}
        {" of "}
        {formatForce(part.strength)}
        {worst && `, hardest when: ${lower(worst.title)}.`}{" "}
        {worst && JSON.stringify(worst.whatIf) !== JSON.stringify(chosen) && (
          <button type="button" className={styles.watch} onClick={() => chooseWhatIf(worst.whatIf)}>
            Watch it
          </button>
        )}
      </p>
      {part.weakest && (
        <p>
          {isWebbing(part.id) ? `Weakest ${formatLength(part.weakest.at)} from A: ` : "Weakest: "}
          {part.weakest.reason}.
        </p>
      )}
      {part.flags?.map((flag) => (
        <p key={flag}>{flag}</p>
      ))}
      <table className={styles.table}>
        <caption className="visually-hidden">Strength of {part.name}, factor by factor</caption>
        <tbody>
          <tr>
            <th scope="row">Rated {ratedBasis && <BasisNote basis={ratedBasis} />}</th>
            <td>{formatForce(part.rated)}</td>
          </tr>
          {part.factors.map((factor) => (
            <tr key={factor.name}>
              <th scope="row">
                {factor.name} <BasisNote basis={factor.basis} />
              </th>
              <td>
                × {formatRatio(factor.value)}
                {factor.spread > 0 && (
                  <span className={styles.spread}> ± {formatPercent(Number(factor.spread.toPrecision(2)))}</span>
                )}
              </td>
            </tr>
          ))}
          <tr className={styles.total}>
            <th scope="row">Left, at the middle</th>
            <td>
              {formatForce(part.strength)} <span className={styles.spread}>× {formatRatio(part.margin)}</span>
            </td>
          </tr>
          <tr>
            <th scope="row">1 in 20 is weaker than</th>
            <td>
              {formatForce(part.strength5)} <span className={styles.spread}>× {formatRatio(part.margin5)}</span>
            </td>
          </tr>
        </tbody>
      </table>
      {part.bases.length > 0 && (
        <ul className={styles.bases}>
          {part.bases.map((basis) => (
            <li key={basisKey(basis)}>
              <BasisNote basis={basis} /> {basis.note}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** The basis that no factor carries is that of the rated strength. */
function basisOfRated(part: PartOutcome): Basis | undefined {
  const ofFactors = new Set(part.factors.map(({ basis }) => basisKey(basis)));
  return part.bases.find((basis) => !ofFactors.has(basisKey(basis)));
}

const basisKey = ({ kind, note }: Basis) => `${kind}: ${note}`;
/** Only webbing has places counted from anchor A. */
const isWebbing = (id: string) => id === "main" || id === "backup";
const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
