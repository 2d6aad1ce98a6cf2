/** Says the sentences of the picture of the scene as it is saved. */
import { saying } from "../saying.ts";
import { SCENE_ENGLISH } from "./sceneEnglish.ts";

export const sayScene = saying(SCENE_ENGLISH);
