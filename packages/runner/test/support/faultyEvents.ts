/** Places of falls that a faulty worker dies of, or never comes back from. */
export const DEADLY = 0.41;
export const STUCK = 0.42;
