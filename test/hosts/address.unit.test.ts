import { absoluteAddress, areaAddress, parseAddress, sheetAddress } from "../../src/hosts/address";

const block = { top: 2, left: 1, bottom: 8, right: 27 };

describe("addresses", () => {
  it("writes an area, with its sheet in quotes where needed", () => {
    expect(areaAddress(block)).toBe("B3:AB9");
    expect(areaAddress({ ...block, bottom: 2, right: 1 })).toBe("B3");
    expect(sheetAddress("Potash plan", block)).toBe("'Potash plan'!B3:AB9");
    expect(absoluteAddress("Fields", block)).toBe("Fields!$B$3:$AB$9");
  });

  it("reads what it writes", () => {
    for (const sheet of ["Fields", "Potash plan", "Sam's", "A1"]) {
      expect(parseAddress(absoluteAddress(sheet, block))).toEqual({ sheet, area: block });
    }
  });

  it("reads an address without a sheet, and corners the other way round", () => {
    expect(parseAddress("AB9:B3")).toEqual({ sheet: undefined, area: block });
  });

  it.each(["", "Fields", "Fields!", "A", "7", "Fields!A1:B", "A0x"])("refuses %p", (text) => {
    expect(parseAddress(text)).toBeUndefined();
  });

  it("takes the last cell of a sheet, and leaves what lies past it to be a name", () => {
    const last = { row: 1_048_575, column: 16_383 };
    expect(parseAddress("XFD1048576")?.area).toMatchObject({ bottom: last.row, right: last.column });
    for (const name of ["YLD2025", "XFE1", "A1048577", "A0"]) expect(parseAddress(name)).toBeUndefined();
  });
});
