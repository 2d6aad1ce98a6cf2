/** Says the sentences of the teardown on the page. */
import { saying } from "../saying.ts";
import { TEARDOWN_ENGLISH } from "./teardownEnglish.ts";

export const sayTeardown = saying(TEARDOWN_ENGLISH);
