import { refuse } from "../fault";
import { within } from "../limit";
import {
  storageTables,
  storageTimes,
  type StorageTableKey,
  type StorageTimeRow,
} from "../../reference/harvest/storage";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";

/** A place in the tables: moisture of the grain and its temperature. */
export interface StoredGrain {
  readonly moisturePct: number;
  readonly temperatureF: number;
}

export interface TableDays {
  readonly table: StorageTableKey;
  readonly days: number;
}

export interface StorageDays {
  readonly days: number;
  readonly governing: StorageTableKey;
  /** What each table allows, where it says anything. */
  readonly read: readonly TableDays[];
  readonly cited: readonly Cited[];
}

/** Logarithms of days along one temperature, driest first. */
interface TemperatureRow {
  readonly temperatureF: number;
  readonly points: readonly { readonly moisturePct: number; readonly logDays: number }[];
}

/** One publication's table, by temperature, with every moisture it prints. */
interface StorageTable {
  readonly rows: readonly TemperatureRow[];
  readonly moisturesPct: readonly number[];
}

const allRows: readonly StorageTimeRow[] = storageTimes.rows;
const tableKeys = ["midwest", "ndsu", "arkansas"] as const satisfies readonly StorageTableKey[];
const tables: Readonly<Record<StorageTableKey, StorageTable>> = {
  midwest: tableOf("midwest"),
  ndsu: tableOf("ndsu"),
  arkansas: tableOf("arkansas"),
};

function tableOf(table: StorageTableKey): StorageTable {
  const own = allRows.filter((row) => row.table === table);
  const temperatures = [...new Set(own.map(({ temperatureF }) => temperatureF))].sort((a, b) => a - b);
  const rows = temperatures.map((temperatureF) => ({
    temperatureF,
    points: own
      .filter((row) => row.temperatureF === temperatureF)
      .map(({ moisturePct, days }) => ({ moisturePct, logDays: Math.log(days) }))
      .sort((a, b) => a.moisturePct - b.moisturePct),
  }));
  return { rows, moisturesPct: [...new Set(own.map(({ moisturePct }) => moisturePct))] };
}

/**
 * Days that shelled corn keeps, read from published tables between whose places the logarithm of the days runs
 * straight. Without a table named, the smallest of them: a printed time also bounds wetter and warmer grain, so that
 * the answer never rises with moisture or temperature.
 *
 * @source midwest-storage-time, ndsu-storage-2010, arkansas-storage-2014
 */
export function storageDays(grain: StoredGrain, asked: StorageTableKey | null): StorageDays {
  within("moisture", grain.moisturePct, harvestLimits.storageMoisture);
  within("temperature", grain.temperatureF, harvestLimits.storageTemperature);
  const read =
    asked === null ? boundsOfAll(grain) : [{ table: asked, days: daysIn(asked, grain) ?? refuseTable(asked) }];
  const smallest = read.reduce((least, one) => (one.days < least.days ? one : least));
  const used = new Set(read.map(({ table }) => table));
  return {
    days: smallest.days,
    governing: smallest.table,
    read,
    cited: [...used].flatMap((table) => allRows.find((row) => row.table === table) ?? []),
  };
}

function boundsOfAll(grain: StoredGrain): TableDays[] {
  return tableKeys.flatMap((table) => {
    const days = boundIn(table, grain);
    return Number.isFinite(days) ? [{ table, days }] : [];
  });
}

/** The least time that a table gives for grain as dry and cool as this or drier and cooler; infinite where it is silent. */
function boundIn(table: StorageTableKey, grain: StoredGrain): number {
  const { rows, moisturesPct } = tables[table];
  const cooler = rows.map((row) => row.temperatureF).filter((value) => value < grain.temperatureF);
  const drier = moisturesPct.filter((value) => value < grain.moisturePct);
  let least = Infinity;
  for (const temperatureF of [grain.temperatureF, ...cooler]) {
    for (const moisturePct of [grain.moisturePct, ...drier]) {
      least = Math.min(least, daysIn(table, { moisturePct, temperatureF }) ?? Infinity);
    }
  }
  return least;
}

/** Days by one table alone; nothing where it does not reach. */
function daysIn(table: StorageTableKey, { moisturePct, temperatureF }: StoredGrain): number | undefined {
  const { rows } = tables[table];
  const above = rows.findIndex((row) => row.temperatureF >= temperatureF);
  const upper = rows[above];
  if (!upper) return undefined;
  const warm = logDaysAt(upper, moisturePct);
  if (upper.temperatureF === temperatureF) return warm === undefined ? undefined : Math.exp(warm);
  const lower = rows[above - 1];
  const cool = lower && logDaysAt(lower, moisturePct);
  if (!lower || warm === undefined || cool === undefined) return undefined;
  const share = (temperatureF - lower.temperatureF) / (upper.temperatureF - lower.temperatureF);
  return Math.exp(cool + share * (warm - cool));
}

function logDaysAt({ points }: TemperatureRow, moisturePct: number): number | undefined {
  const above = points.findIndex((point) => point.moisturePct >= moisturePct);
  const upper = points[above];
  if (!upper) return undefined;
  if (upper.moisturePct === moisturePct) return upper.logDays;
  const lower = points[above - 1];
  if (!lower) return undefined;
  const share = (moisturePct - lower.moisturePct) / (upper.moisturePct - lower.moisturePct);
  return lower.logDays + share * (upper.logDays - lower.logDays);
}

function refuseTable(table: StorageTableKey): never {
  refuse({
    kind: "notPublished",
    what: "storage time for this moisture and temperature",
    where: `the ${storageTables[table].label} table`,
    instead: "The Midwest table covers 13 to 28 % and 40 to 80 °F.",
  });
}
