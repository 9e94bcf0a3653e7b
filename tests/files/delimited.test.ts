import { describe, expect, it } from "vitest";
import { parseDelimited, tellDelimiter } from "../../src/files/delimited.ts";

describe("the delimiter", () => {
  it.each([
    [",", "date,rain\n2024-01-01,1\n2024-01-02,2\n"],
    [";", "Datum;Regen;Wind\n01.02.2012;3,5;1,2\n02.02.2012;0,0;1,0\n"],
    ["\t", "date\train, mm\n2024-01-01\t1,5\n2024-01-02\t2,5\n"],
    ["|", "date|rain\n2024-01-01|1\n2024-01-02|2\n"],
    [
      ",",
      "# a station; its height; its owner\n# more\ndate,rain,note\n2024-01-01,1,dry; calm\n2024-01-02,2,wet\n",
    ],
    [";", "notes, with commas\n\nday;rain\n1;0,2\n2;0,4\n3;0,0\n"],
  ])("%j is told", (delimiter, text) => expect(tellDelimiter(text)).toBe(delimiter));
});

describe("cells", () => {
  it("are trimmed, a byte-order mark and carriage returns fall away, blank lines keep their place", () => {
    const { rows } = parseDelimited("\ufeffdate , rain\r\n\r\n2024-01-01, 1 \r\n");
    expect(rows).toEqual([["date", "rain"], [""], ["2024-01-01", "1"], [""]]);
  });

  it("may hold the delimiter, a quotation mark and a line break within quotes", () => {
    const { rows } = parseDelimited('a,b\n"1,5","say ""wet""\nday"\n');
    expect(rows[1]).toEqual(["1,5", 'say "wet"\nday']);
  });

  it("tell of a quotation mark that never closes and of rows left unread", () => {
    expect(parseDelimited('a,b\n1,"2\n3,4\n').openQuoteRow).toBe(2);
    expect(parseDelimited("a,b\n1,2\n").openQuoteRow).toBeNull();
    const cut = parseDelimited("a,b\n1,2\n3,4\n", { maxRows: 2 });
    expect(cut.cut).toBe(true);
    expect(cut.rows).toHaveLength(2);
  });
});
