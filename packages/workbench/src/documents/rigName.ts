/** What a rig's document is called on the page. */
import { sayPage } from "@secondline/words/page/page";

export function rigName({ name }: { readonly [key: string]: unknown }): string {
  return typeof name === "string" && name.trim() !== "" ? name : sayPage("autosave.rigWithoutName");
}
