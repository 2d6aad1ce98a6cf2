/** The rig document's schema for editors and other programs, in the JSON Schema language. */
import * as z from "zod";
import { rigSchema } from "./document.ts";
import { describeFields } from "./fieldSchemas.ts";

/** JSON Schema of what a rig file may hold. It knows fields and kinds; limits between fields are checked by `readRig`. */
export function rigJsonSchema(): object {
  const schema = rigSchema();
  describeFields();
  return z.toJSONSchema(schema, { io: "input", target: "draft-2020-12" });
}
