import { sayPage } from "@secondline/words/page/page";
import type { ViewName } from "@secondline/workbench";
import { ActionMenu } from "../design/ActionMenu.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./ViewSwitch.module.css";

const VIEWS: readonly { readonly view: ViewName; readonly label: string; readonly detail: string }[] = [
  { view: "rig", label: sayPage("viewSwitch.oneRig"), detail: sayPage("viewSwitch.oneRigHint") },
  { view: "layouts", label: sayPage("viewSwitch.layouts"), detail: sayPage("viewSwitch.layoutsHint") },
  { view: "howFar", label: sayPage("viewSwitch.howFar"), detail: sayPage("viewSwitch.howFarHint") },
  { view: "wear", label: sayPage("viewSwitch.wear"), detail: sayPage("viewSwitch.wearHint") },
  { view: "lessons", label: sayPage("viewSwitch.lessons"), detail: sayPage("viewSwitch.lessonsHint") },
];

/** The views of the page, as tabs in the header. */
export function ViewTabs() {
  const view = useSandbox((state) => state.session.view);
  const { look } = useActions();
  return (
    <nav className={styles.tabs} aria-label={sayPage("viewSwitch.views")}>
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
  return <ActionMenu label={sayPage("viewSwitch.views")} icon="views" iconOnly entries={entries} />;
}
