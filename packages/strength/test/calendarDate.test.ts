import { expect, it } from "vitest";
import { isDate, readDate } from "../src/dates/calendarDate.ts";

it("tells a date from other text as the calendar does", () => {
  const two = (n: number) => `${n}`.padStart(2, "0");
  for (const year of ["0000", "1900", "2000", "2023", "2024", "9999"]) {
    for (let month = 0; month <= 13; month++) {
      for (let day = 0; day <= 32; day++) {
        const text = `${year}-${two(month)}-${two(day)}`;
        expect(isDate(text), text).toBe(readDate(text) !== undefined);
      }
    }
  }
  for (const text of ["", "2024-2-3", "2024-02-03T00:00", "03.02.2024", "+002024-02-03", "２０２４-02-03"]) {
    expect(isDate(text), text).toBe(false);
  }
});
