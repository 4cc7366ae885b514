import { unzipSync } from "fflate";
import { HostError } from "../../port";
import { hostWords } from "../../words";

const say = hostWords.files;

/** What all parts of a file may come to: more than this would take the page down. */
const mostUnpacked = 250_000_000;

/** A list that goes on and on is damaged. */
const mostParts = 20_000;

/** No packed byte becomes more than this many. */
const mostPerByte = 1032;

const zip = [0x50, 0x4b];
/** The container of old .xls files, and of files locked with a password. */
const oldContainer = [0xd0, 0xcf, 0x11, 0xe0];

/**
 * Looks at a file without unpacking it.
 *
 * @throws HostError with a sentence when it cannot be a workbook that this page reads
 */
export function refuseAtSight(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new HostError(say.empty, "Empty");
  if (startsWith(bytes, oldContainer)) throw new HostError(say.locked, "Locked");
  if (!startsWith(bytes, zip)) throw new HostError(say.otherKind, "NotReadable");
  const { unpacked, isWorkbook } = contentsOf(bytes);
  if (unpacked > mostUnpacked) throw new HostError(say.unpacksTooLarge, "TooLarge");
  if (!isWorkbook) throw new HostError(say.otherKind, "NotReadable");
}

export function damaged(cause: unknown): HostError {
  return new HostError(say.damaged, "NotReadable", { cause });
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

/** What the list at the end of a zip says about its parts. */
function contentsOf(bytes: Uint8Array): { unpacked: number; isWorkbook: boolean } {
  let [parts, unpacked, isWorkbook] = [0, 0, false];
  const filter = ({ name, size, originalSize }: { name: string; size: number; originalSize: number }) => {
    parts += 1;
    if (parts > mostParts) throw new Error("more parts than any workbook has");
    unpacked += originalSize === 0 ? size * mostPerByte : originalSize;
    isWorkbook ||= /(^|\/)workbook\.xml$/.test(name);
    return false;
  };
  try {
    unzipSync(bytes, { filter });
  } catch (cause) {
    throw damaged(cause);
  }
  return { unpacked, isWorkbook };
}
