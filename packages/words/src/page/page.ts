/** Says the sentences of the page at first sight: head, scene, question, verdict, notices. */
import { saying } from "../saying.ts";
import { PAGE_ENGLISH } from "./pageEnglish.ts";

export const sayPage = saying(PAGE_ENGLISH);
