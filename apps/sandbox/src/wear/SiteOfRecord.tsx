import { sayRecord } from "@secondline/words/page/record";
import { SITE_VALUES, type SiteKey, siteOf, withSite } from "@secondline/workbench";
import { messagesUnder } from "@secondline/workbench/record";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { Messages } from "./EntryForm.tsx";
import styles from "./wear.module.css";

/** Latitude and hemisphere of all that the record follows: by them a month outside counts as more or less sun. */
export function SiteOfRecord() {
  const issues = useWear((state) => state.issues);
  const faults = messagesUnder(issues, "latitude").length + messagesUnder(issues, "hemisphere").length;
  return (
    <Disclosure title={sayRecord("site.title")} faults={faults}>
      <p className={styles.note}>{sayRecord("site.why")}</p>
      <SiteChoice id="latitude" />
      <SiteChoice id="hemisphere" />
    </Disclosure>
  );
}

function SiteChoice({ id }: { id: SiteKey }) {
  const record = useWear((state) => state.work.record);
  const issues = useWear((state) => state.issues);
  const { edit, finish } = useWearActions();
  const value = siteOf(record, id);
  const known: readonly string[] = SITE_VALUES[id];
  const options = [
    { value: "", label: sayRecord(`site.${id}.unsaid`) },
    ...SITE_VALUES[id].map((one) => ({ value: one as string, label: sayRecord(`site.${one}`) })),
    // What a file has that the format does not know stays as it is, with what is wrong below.
    ...(value === "" || known.includes(value) ? [] : [{ value, label: value }]),
  ];
  const put = (next: string) => {
    edit(withSite(record, id, next), sayRecord("site.step"), `site.${id}`);
    finish();
  };
  return (
    <>
      <Choice<string> label={sayRecord(`site.${id}`)} value={value} options={options} onChange={put} />
      <Messages messages={messagesUnder(issues, id)} />
    </>
  );
}
