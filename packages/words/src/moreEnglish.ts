/** The end of a list that would be too long, on the page and in the terminal. */
export const MORE_ENGLISH = { more: "… and {count} more" } as const;
