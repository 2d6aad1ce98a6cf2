export { pseudo as broughtIn } from "./inPseudo.ts";
