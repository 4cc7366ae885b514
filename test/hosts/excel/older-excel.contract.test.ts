import { excelHost } from "../../../src/hosts/excel/excel-host";
import { answerRequests, loadOffice, makeGlobal, type GenuineOffice } from "./genuine-office";
import { MemoryWorkbook } from "./memory/memory-workbook";
import { richPlan } from "./rich-plan";

/** Fills the rich plan in an Excel that knows the ExcelApi up to a level; the library refuses anything newer. */
async function fillAt(level: number) {
  const office: GenuineOffice = await loadOffice(level);
  makeGlobal(office);
  const workbook = new MemoryWorkbook();
  answerRequests(office, workbook.answer);
  const receipt = await excelHost().fill(richPlan, { protect: true });
  office.close();
  return { receipt, workbook };
}

describe("an Excel older than today's", () => {
  it("gets everything from level 1.11 on, which the manifest asks for; notes come as comments", async () => {
    const { receipt, workbook } = await fillAt(11);
    expect(receipt).not.toHaveProperty("leftOut");
    expect(workbook.sheet("Fields").notes).toEqual([
      { address: "Fields!C4", text: "N-P2O5-K2O in percent", as: "comment" },
    ]);
  });

  it("gets all but the notes at level 1.9, and the receipt says so", async () => {
    const { receipt, workbook } = await fillAt(9);
    expect(receipt.leftOut).toEqual(["This version of Excel takes no notes on cells; they were left out."]);
    expect(workbook.sheet("Fields").notes).toEqual([]);
    expect(workbook.sheet("Prices list").charts).toHaveLength(3);
  });

  it("is asked for nothing it cannot do: at level 1.8 the fill stops and takes itself back", async () => {
    await expect(fillAt(8)).rejects.toMatchObject({
      message:
        "This version of Excel is too old for that. Update Excel, then try again. The workbook is as it was before.",
    });
  });
});
