export const SPREAD_FAULT = "Expected a percentage from 0 to 100, such as 10 %.";
