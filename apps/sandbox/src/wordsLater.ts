/** Every sentence that a face may need after the first load; what is loaded at first must not import it. */
import { english } from "@secondline/words";
import { sayLaterIn } from "@secondline/words/later";

export const sayLater = sayLaterIn(english);
