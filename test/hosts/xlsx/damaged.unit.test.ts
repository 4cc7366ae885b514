import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import fc from "fast-check";
import { readFile } from "../../../src/hosts/browser/kept/workbook-file";
import { HostError } from "../../../src/hosts/port";
import { readXlsx } from "../../../src/hosts/xlsx/read/read-xlsx";
import { writeXlsx } from "../../../src/hosts/xlsx/write-xlsx";
import { smallPlan, smallValues } from "./small-plan";

/** Whatever is chosen as a file: it opens, or one sentence says what is wrong and that nothing was changed. */
let ours: Uint8Array;
beforeAll(async () => {
  ours = await writeXlsx(smallPlan, smallValues);
});

function sentenceFor(bytes: Uint8Array): Promise<string> {
  return refusal(readXlsx(bytes));
}

async function refusal(reading: Promise<unknown>): Promise<string> {
  const thrown: unknown = await reading.then(
    () => "it was read",
    (reason: unknown) => reason,
  );
  if (!(thrown instanceof HostError)) throw new Error(`no sentence: ${String(thrown)}`);
  return thrown.message;
}

/** The file with some of its parts changed, or taken out. */
function withParts(change: Readonly<Record<string, ((text: string) => string) | undefined>>): Uint8Array {
  const parts = unzipSync(ours);
  for (const [name, changed] of Object.entries(change)) {
    const part = parts[name];
    if (!part) throw new Error(`no part ${name}`);
    if (changed) parts[name] = strToU8(changed(strFromU8(part)));
    else delete parts[name];
  }
  return zipSync(parts);
}

/** Where an entry of the list at the end of a zip begins. */
function listedAt(bytes: Uint8Array, name: string): number {
  const signature = [0x50, 0x4b, 1, 2];
  for (let at = 0; at < bytes.length; at++) {
    const isEntry = signature.every((byte, index) => bytes[at + index] === byte);
    if (isEntry && strFromU8(bytes.slice(at + 46, at + 46 + name.length)) === name) return at;
  }
  throw new Error(`no entry ${name}`);
}

/** The file with another size declared for a part than it has. */
function withDeclaredSize(bytes: Uint8Array, name: string, size: number): Uint8Array {
  const changed = bytes.slice();
  new DataView(changed.buffer).setUint32(listedAt(bytes, name) + 24, size, true);
  return changed;
}

const sheet1 = "xl/worksheets/sheet1.xml";
const otherKind = /^This file is not an \.xlsx workbook\..* Nothing here was changed\.$/;
const damaged = /^This \.xlsx file is damaged.* Nothing here was changed\.$/;

it("an empty file", async () => {
  expect(await sentenceFor(new Uint8Array())).toMatch(/^This file is empty\./);
});

it.each([
  ["text", strToU8("Field,Acres\nNorth,80\n")],
  ["a picture", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])],
  ["a page that calls itself a workbook", strToU8("<html><table><tr><td>1</td></tr></table></html>")],
  ["one letter", strToU8("P")],
  ["a zip of something else", zipSync({ "notes.txt": strToU8("nothing"), "word/document.xml": strToU8("<w/>") })],
  ["a binary workbook", zipSync({ "[Content_Types].xml": strToU8("<Types/>"), "xl/workbook.bin": strToU8("x") })],
])("a file of another kind: %s", async (_what, bytes) => {
  expect(await sentenceFor(bytes)).toMatch(otherKind);
});

it("a file locked with a password", async () => {
  const container = new Uint8Array(4096);
  container.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
  expect(await sentenceFor(container)).toMatch(/^This file is locked with a password, or is an old \.xls file\./);
});

it("a workbook of another program", async () => {
  const { Workbook } = await import("exceljs");
  const foreign = new Workbook();
  foreign.addWorksheet("Mine").getCell("A1").value = 5;
  const bytes = new Uint8Array((await foreign.xlsx.writeBuffer()) as ArrayBuffer);
  expect(await sentenceFor(bytes)).toMatch(/not made by Loamsheet.* Nothing here was changed\.$/);
});

describe("a file of 50 MB", () => {
  const zeros = (bytes: number) => new File([new Uint8Array(bytes)], "large.xlsx");

  it("is looked at", async () => {
    expect(await refusal(readFile(zeros(50_000_000)))).toMatch(otherKind);
  });
  it("and a byte is refused unread", async () => {
    const file = zeros(50_000_001);
    const look = jest.spyOn(file, "arrayBuffer");
    expect(await refusal(readFile(file))).toMatch(
      /^This file is larger than 50 MB, more than this page can hold\. Nothing here was changed\.$/,
    );
    expect(look).not.toHaveBeenCalled();
  });
});

describe("a damaged file", () => {
  it.each([0.001, 0.1, 0.5, 0.9, 0.999])("cut off after %d of it", async (share) => {
    expect(await sentenceFor(ours.slice(0, Math.max(30, Math.floor(ours.length * share))))).toMatch(damaged);
  });
  it("without its last byte", async () => {
    expect(await sentenceFor(ours.slice(0, -1))).toMatch(damaged);
  });
  it.each<[string, Parameters<typeof withParts>[0]]>([
    ["without its workbook's relationships", { "_rels/.rels": undefined }],
    ["without its content types", { "[Content_Types].xml": undefined }],
    ["whose workbook lists no sheet", { "xl/workbook.xml": () => "<workbook/>" }],
    ["whose workbook is no XML", { "xl/workbook.xml": () => "\u0000\u0001 <<<" }],
    ["whose cells reach to the last corner", { [sheet1]: (xml) => xml.replace('<c r="A1"', '<c r="XFD1048576"') }],
    ["with a bracket open in a formula", { [sheet1]: (xml) => xml.replace(/<f>[^<]*<\/f>/, "<f>SUM(Fields[</f>") }],
  ])("%s", async (_what, change) => {
    expect(await sentenceFor(withParts(change))).toMatch(damaged);
  });

  it("with any one byte changed is read, or is refused with a sentence", async () => {
    const places = fc.tuple(fc.nat(ours.length - 1), fc.integer({ min: 1, max: 255 }));
    await fc.assert(
      fc.asyncProperty(places, async ([place, by]) => {
        const bytes = ours.slice();
        bytes[place] = (bytes[place] ?? 0) ^ by;
        const said = await readXlsx(bytes).then(
          () => "Nothing here was changed.",
          (thrown: unknown) => (thrown instanceof HostError ? thrown.message : String(thrown)),
        );
        expect(said).toMatch(/Nothing here was changed\.$/);
      }),
      { numRuns: 300 },
    );
  });

  it("whose XML names itself over and over is not unfolded", async () => {
    const bomb = `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa">${"bcdefghi"
      .split("")
      .map((name, index) => `<!ENTITY ${name} "${`&${"abcdefgh"[index]};`.repeat(10)}">`)
      .join("")}]>`;
    const bytes = withParts({
      "xl/sharedStrings.xml": (xml) => xml.replace("<sst", `${bomb}<sst`).replace(/<t>[^<]*<\/t>/, "<t>&i;</t>"),
    });
    const answer = await readXlsx(bytes).then(
      ({ plan }) => plan.sheets.flatMap(({ cells }) => cells.map(({ content }) => String(content).length)),
      (thrown: unknown) => (thrown instanceof HostError ? [0] : [Infinity]),
    );
    expect(Math.max(...answer)).toBeLessThan(10_000);
  });
});

describe("a zip bomb", () => {
  it("that says how large it becomes is refused unopened", async () => {
    expect(await sentenceFor(withDeclaredSize(ours, sheet1, 0xfffffff0))).toMatch(
      /^This file unpacks to more than 250 MB, more than this page can hold\. Nothing here was changed\.$/,
    );
  });
  it("made of many parts is counted together", async () => {
    const parts = Object.fromEntries(
      Array.from({ length: 40 }, (_, index) => [`xl/worksheets/extra${index}.xml`, strToU8("<x/>")]),
    );
    const many = Object.keys(parts).reduce<Uint8Array>(
      (bytes, name) => withDeclaredSize(bytes, name, 10_000_000),
      zipSync({ ...unzipSync(ours), ...parts }),
    );
    expect(await sentenceFor(many)).toMatch(/more than 250 MB/);
  });
  it("that says it is small is stopped there", async () => {
    const large = withParts({ [sheet1]: (xml) => xml.replace("<sheetData>", `<sheetData>${" ".repeat(5_000_000)}`) });
    expect(await sentenceFor(withDeclaredSize(large, sheet1, 1000))).toMatch(damaged);
  });
  it("whose list never ends", async () => {
    // A record of the larger zip form, which may count to four thousand million parts.
    const record = new DataView(new ArrayBuffer(56 + 20));
    record.setUint32(0, 0x06064b50, true);
    record.setBigUint64(4, 44n, true);
    for (const at of [24, 32]) record.setBigUint64(at, 4_000_000_000n, true);
    record.setUint32(56, 0x07064b50, true);
    const end = ours.length - 22;
    record.setBigUint64(64, BigInt(end), true);
    const tail = ours.slice(end);
    tail.set([0xff, 0xff, 0xff, 0xff], 8);
    const bytes = new Uint8Array([...ours.slice(0, end), ...new Uint8Array(record.buffer), ...tail]);
    expect(await sentenceFor(bytes)).toMatch(damaged);
  });
});
