import { limits } from "../../../core/limits";
import { prose } from "../../formula/expression";
import { sheetName } from "../../formula/reference";
import type { Block, EntriesBlock } from "../../model/block";
import { formats } from "../../model/cell";
import { pick, typedNumber, typedWords, within } from "../../model/columns";
import { typedEntry } from "../../model/entries";
import { tableBlock, type TableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { beforeFieldWork, howToRead, inventedFarm } from "../start-words";
import { tabColors } from "../tab-colors";
import type { ClientContext } from "./client-context";
import { clientCrops } from "./client-headers";
import { clientSheets } from "./client-sheets";
import { soilGuideBlock } from "./client-soil";

export const clientNames = {
  client: "client_name",
  preparedBy: "prepared_by",
  preparedOn: "prepared_on",
  season: "client_season",
  note: "client_note",
} as const;

export function clientSheet(context: ClientContext): SheetModel {
  return {
    key: "client",
    name: clientSheets.client.name,
    tabColor: tabColors.start,
    title: "Client",
    answers: "Whose plan this is, at which prices, and how to go through it.",
    blocks: [
      whoBlock(context),
      cropsBlock(context),
      ...(context.soil ? [soilGuideBlock(context.soil)] : []),
      orderBlock(context),
      howToRead(),
      beforeFieldWork(),
    ],
    widths: [30, 34, 12, 34],
    print: { orientation: "portrait", onePage: true },
  };
}

function whoBlock({ clientName, preparedBy, preparedOn, note }: ClientContext): EntriesBlock {
  return {
    kind: "entries",
    key: "who",
    title: "Whose plan",
    entries: [
      typedEntry(
        { key: "client", label: "Client", name: clientNames.client, says: "Stands on the report." },
        clientName,
      ),
      typedEntry(
        { key: "by", label: "Prepared by", name: clientNames.preparedBy, says: "Your name and license." },
        preparedBy,
      ),
      typedEntry(
        {
          key: "on",
          label: "Date",
          format: formats.date,
          name: clientNames.preparedOn,
          says: "The day you hand it over.",
        },
        preparedOn,
      ),
      typedEntry(
        { key: "season", label: "Season", name: clientNames.season, says: "In your own words." },
        "next season",
      ),
      typedEntry(
        { key: "note", label: "Note for the report", name: clientNames.note, says: "A sentence or two." },
        note,
      ),
    ],
  };
}

function cropsBlock({ crops }: ClientContext): TableBlock {
  return tableBlock(
    clientCrops,
    { title: "Crops", rows: crops.length },
    {
      crop: typedWords(pick(crops, "crop"), {
        width: 30,
        note: "Names that the lists of crops on other sheets offer.",
      }),
      price: typedNumber(pick(crops, "priceUsdPerBu"), {
        width: 14,
        format: formats.cents,
        allow: within(limits.price, "Price to plan with, a bushel"),
      }),
      costPerBushel: typedNumber(pick(crops, "costUsdPerBu"), {
        width: 14,
        format: formats.cents,
        allow: within(limits.price, "Hauling, drying and storing a bushel"),
      }),
    },
  );
}

function orderBlock({ withDemo }: ClientContext): Block {
  return {
    kind: "paragraphs",
    title: "In this order",
    style: "body",
    paragraphs: [
      prose`1. Prices above; then ${sheetName("today")}: each field with its crop, yield and costs as it is farmed now.`,
      prose`2. ${sheetName("changes")}: one line a change, with a low, a likely and a high gain, and a decision.`,
      prose`3. Talk ${sheetName("compare")} through, and print ${sheetName("report")}.`,
      "Dollar figures and gains are examples: write over them. Put a client's own strip trials before anybody's averages.",
      ...(withDemo ? [inventedFarm] : []),
    ],
  };
}
