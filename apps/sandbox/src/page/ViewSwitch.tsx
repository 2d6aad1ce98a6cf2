import type { ViewName } from "@secondline/workbench";
import { ActionMenu } from "../design/ActionMenu.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./ViewSwitch.module.css";

const VIEWS: readonly { readonly view: ViewName; readonly label: string; readonly detail: string }[] = [
  { view: "rig", label: "One rig", detail: "The fall, its forces and the verdict" },
  { view: "layouts", label: "Layouts", detail: "Two to four rigs side by side" },
  { view: "howFar", label: "How far", detail: "How loose, how few, how heavy it can be" },
  { view: "wear", label: "Wear", detail: "What the webbing still holds, and until when" },
  { view: "lessons", label: "Lessons", detail: "Predict, run, see why" },
];

/** The views of the page, as tabs in the header. */
export function ViewTabs() {
  const view = useSandbox((state) => state.session.view);
  const { look } = useActions();
  return (
    <nav className={styles.tabs} aria-label="Views">
      {VIEWS.map(({ view: name, label, detail }) => (
        <button
          key={name}
          type="button"
          className={styles.tab}
          title={detail}
          aria-current={name === view ? "page" : undefined}
          onClick={() => look({ view: name })}
        >
          {label}
        </button>
      ))}
    </nav>
  );
}

/** The same for a narrow header. */
export function ViewMenu() {
  const { look } = useActions();
  const entries = VIEWS.map(({ view, label, detail }) => ({ label, detail, onSelect: () => look({ view }) }));
  return <ActionMenu label="Views" icon="views" iconOnly entries={entries} />;
}
