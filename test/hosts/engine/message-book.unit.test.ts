import { MessageBook } from "../../../src/hosts/engine/message-book";

const cell = { workbookId: "w", sheetId: "s", row: 3, column: 2 };
const refused = { rowOffset: 0, columnOffset: 0, code: "#VALUE!", message: "yield must be a number." };

describe("MessageBook", () => {
  it("finds the sentence of a cell by the code it shows", () => {
    const book = new MessageBook();
    book.remember(cell, [refused]);
    expect(book.messageAt(cell, "#VALUE!")).toBe("yield must be a number.");
    expect(book.messageAt(cell, "#N/A")).toBeUndefined();
    expect(book.messageAt({ ...cell, row: 4 }, "#VALUE!")).toBeUndefined();
  });

  it("keeps what all functions of one formula said in the same calculation", () => {
    const book = new MessageBook();
    book.startCalculation();
    book.remember(cell, [refused]);
    book.remember(cell, []);
    expect(book.messageAt(cell, "#VALUE!")).toBe("yield must be a number.");
  });

  it("forgets what a formula said in an earlier calculation once it is calculated again", () => {
    const book = new MessageBook();
    book.remember(cell, [refused]);
    book.startCalculation();
    expect(book.messageAt(cell, "#VALUE!")).toBe("yield must be a number.");
    book.remember(cell, []);
    expect(book.messageAt(cell, "#VALUE!")).toBeUndefined();
  });

  it("finds the sentence of a spilled cell where it stands", () => {
    const book = new MessageBook();
    book.remember(cell, [{ ...refused, rowOffset: 2, columnOffset: 1 }]);
    const spilled = { ...cell, row: 5, column: 3 };
    expect(book.messageAt(spilled, "#VALUE!")).toBe("yield must be a number.");
    book.startCalculation();
    book.remember(cell, []);
    expect(book.messageAt(spilled, "#VALUE!")).toBeUndefined();
  });

  it("forgets a closed workbook only", () => {
    const book = new MessageBook();
    book.remember(cell, [refused]);
    book.remember({ ...cell, workbookId: "other" }, [refused]);
    book.forget("w");
    expect(book.messageAt(cell, "#VALUE!")).toBeUndefined();
    expect(book.messageAt({ ...cell, workbookId: "other" }, "#VALUE!")).toBe("yield must be a number.");
  });
});
