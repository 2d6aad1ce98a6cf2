export { footOf, runWords } from "./pictureWords.ts";
export {
  type PictureSource,
  plotPicture,
  printedPictures,
  type SceneSnapshot,
  scenePicture,
  sideSnapshot,
} from "./runPictures.ts";
