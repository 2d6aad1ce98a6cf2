import { Combobox } from "@base-ui/react/combobox";
import { GENERIC_STOCKS, type LineStock } from "@secondline/rig";
import { stockName } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import { isFoundBy } from "@secondline/workbench";
import { Icon } from "../design/icons.tsx";
import styles from "./stocks.module.css";

const { say, stock: detail } = newRigWords;

interface Props {
  label: string;
  /** Id of the chosen one. */
  value: string;
  /** The rig's own; the generic ones follow. */
  own: readonly LineStock[];
  onChange: (id: string) => void;
  onFocus?: () => void;
  unconfirmed?: string | undefined;
}

/** A webbing or rope from a list in which strength, weight and stretch stand beside every name; found by the trade's words too. */
export function StockChoice({ label, value, own, onChange, onFocus, unconfirmed }: Props) {
  const stocks = [...own, ...GENERIC_STOCKS.values()];
  const chosen = stocks.find(({ id }) => id === value) ?? null;
  return (
    <div className={styles.field}>
      <Combobox.Root
        items={stocks}
        value={chosen}
        onValueChange={(next: LineStock | null) => next && onChange(next.id)}
        itemToStringLabel={({ name }: LineStock) => stockName(name)}
        isItemEqualToValue={(a: LineStock, b: LineStock) => a.id === b.id}
        filter={isFoundBy}
        autoHighlight
      >
        <Combobox.Label className={styles.label}>{label}</Combobox.Label>
        <Combobox.Trigger
          className={styles.trigger}
          aria-description={unconfirmed}
          data-unconfirmed={unconfirmed && ""}
          onFocus={onFocus}
        >
          <span>{chosen ? stockName(chosen.name) : value}</span>
          <Icon name="down" size={14} />
        </Combobox.Trigger>
        {chosen && <p className={styles.chosen}>{detail(chosen)}</p>}
        <Combobox.Portal>
          <Combobox.Positioner className={styles.positioner} sideOffset={4} align="end">
            <Combobox.Popup className={styles.popup} aria-label={label}>
              <Combobox.Input className={styles.find} placeholder={say("stock.find")} aria-label={say("stock.find")} />
              <Combobox.Empty className={styles.empty}>{say("stock.none")}</Combobox.Empty>
              <Combobox.List>
                {(stock: LineStock) => (
                  <Combobox.Item key={stock.id} value={stock} className={styles.item}>
                    <span className={styles.name}>{stockName(stock.name)}</span>
                    <span className={styles.detail}>{detail(stock)}</span>
                  </Combobox.Item>
                )}
              </Combobox.List>
            </Combobox.Popup>
          </Combobox.Positioner>
        </Combobox.Portal>
      </Combobox.Root>
    </div>
  );
}
