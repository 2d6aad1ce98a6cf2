export { footOf, runWords } from "./pictureWords.ts";
export { weakPlace } from "./weakPlace.ts";
