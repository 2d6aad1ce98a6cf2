/**
 * Texts that come from the packages below the words: names of the rig's fields, messages of its checks, titles of events, bases
 * of numbers. They are English; another language looks each of them up by its English.
 */
export const broughtIn = (english: string): string => english;
