/**
 * The page checks documents and writes no schema of them, yet zod hangs the writing of schemas on every one it makes: 16 kB that a
 * visitor would load for nothing. So with the formats that zod knows of texts, such as addresses of mail and of computers. Left out of a
 * bundle, they throw where somebody asks for them after all. Nor are zod's English messages read: faults are told by the words, from the
 * codes of zod's issues.
 */
const FILE = /zod\/v4\/classic\/schemas\.js$/;
const MESSAGES = /zod\/v4\/locales\/en\.js$/;
const NO_MESSAGES = "export default function () { return { localeError: () => undefined }; }";

/** What is left out, and how often zod 4.6 says it at least. */
const CUTS = [
  { what: /^\s*inst\._zod\.processJSONSchema = .*;$/gm, least: 30, put: "" },
  { what: /createStandardJSONSchemaMethod\(this, "(?:input|output)"\)/g, least: 2, put: "undefined" },
  {
    what: /return createToJSONSchemaMethod\(this, \{\}\)\(params\);/g,
    least: 1,
    put: 'throw new Error("This bundle writes no JSON Schema.");',
  },
  {
    what: /return this\.check\(core\._\w+\(Zod\w+, params\)\);/g,
    least: 25,
    put: 'throw new Error("This bundle knows no formats of texts.");',
  },
  {
    what: /processors\.aggregateChecks\(inst\)/g,
    least: 10,
    put: '(() => { throw new Error("This bundle tells nothing of its checks."); })()',
  },
];

/** A plugin of the bundler. Throws where zod is no longer written as it was. */
export function leanZod() {
  return {
    name: "lean-zod",
    apply: "build",
    transform: {
      filter: { id: [FILE, MESSAGES] },
      handler(code, id) {
        if (!MESSAGES.test(id)) return { code: CUTS.reduce(cut, code), map: null };
        cut(code, { what: /localeError: error\(\)/g, least: 1, put: "" });
        return { code: NO_MESSAGES, map: null };
      },
    },
  };
}

function cut(code, { what, least, put }) {
  const found = code.match(what)?.length ?? 0;
  if (found < least) throw new Error(`zod has changed: found ${found} of ${what}, expected ${least} or more`);
  return code.replace(what, put);
}
