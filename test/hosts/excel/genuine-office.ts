import path from "node:path";
import { JSDOM, VirtualConsole } from "jsdom";
import type { FunctionRuntime } from "../../../src/hosts/excel/register";
import type { RequestBody, ResponseBody } from "./memory/request-processor";

/**
 * The genuine Office library in a page without a window. Only what stands behind it is ours: requests are answered
 * in memory. All members of the library that are private are used in this file and nowhere else.
 */
export interface GenuineOffice {
  readonly window: OfficeWindow;
  /** The person selects other cells. */
  select(): void;
  close(): void;
}

/** Answers one request of the library. */
export type Answer = (body: RequestBody) => ResponseBody;

interface OfficeWindow {
  readonly Excel: typeof Excel;
  readonly Office: typeof Office;
  readonly CustomFunctions: FunctionRuntime;
  readonly OSF: { readonly _OfficeAppFactory: { setContext(context: typeof Office.context): void } };
  readonly OfficeExtension: {
    readonly SessionBase: { _overrideSession: unknown };
    readonly CommonUtility: { _doApiNotSupportedCheck: boolean };
    readonly HostBridge: { init(bridge: HostBridge): void };
  };
  eval(script: string): unknown;
}

/** The line between the function runtime and the spreadsheet behind it. */
export interface HostBridge {
  sendMessageToHost(message: string): void;
  onMessageFromHost?(message: string): void;
}

const libraryFolder = path.dirname(require.resolve("@microsoft/office-js/dist/office.js"));

/**
 * Loads the library as a page in desktop Excel does.
 *
 * @param level highest ExcelApi level that this Excel knows, such as 12 for "1.12"
 */
export async function loadOffice(level = 20): Promise<GenuineOffice> {
  const dom = new JSDOM(`<head><script src="file://${libraryFolder}/office.js"></script></head>`, {
    url: `file://${libraryFolder}/taskpane.html?_host_Info=Excel$Win32$16.01$en-US$1$$$0`,
    runScripts: "dangerously",
    resources: "usable",
    // The library complains about missing storage for its telemetry; that is not what is tested.
    virtualConsole: new VirtualConsole(),
  });
  const window = dom.window as unknown as OfficeWindow; // the library adds these to the window
  await until(() => "Excel" in window && "OfficeExtension" in window && "CustomFunctions" in window);
  const listeners: Listener[] = [];
  window.OSF._OfficeAppFactory.setContext(contextOf(level, listeners));
  window.OfficeExtension.CommonUtility._doApiNotSupportedCheck = true;
  return {
    window,
    select: () => listeners.forEach((listener) => listener({ document: window.Office.context.document })),
    close: () => dom.window.close(),
  };
}

type Listener = (event: unknown) => void;

/** The library can check every member it offers against what the host says it supports, and asks here for events. */
function contextOf(level: number, listeners: Listener[]): typeof Office.context {
  const isSetSupported = (name: string, version = "1.1") =>
    name !== "ExcelApi" || Number(version.split(".")[1]) <= level;
  const addHandlerAsync = (_event: string, listener: Listener, done: (result: object) => void) => {
    listeners.push(listener);
    done({ status: "succeeded" });
  };
  const diagnostics = { host: "Excel", platform: "PC", version: "16.0.18025" };
  const context: unknown = { requirements: { isSetSupported }, document: { addHandlerAsync }, diagnostics };
  return context as typeof Office.context; // all that is used of it
}

/** Lets a host in memory answer every request from now on. */
export function answerRequests({ window }: GenuineOffice, answer: Answer): void {
  window.OfficeExtension.SessionBase._overrideSession = {
    _resolveRequestUrlAndHeaderInfo: () => Promise.resolve(null),
    getEventRegistration: () => null,
    _createRequestExecutorOrNull: () => ({
      executeAsync: (_data: unknown, _flags: number, { Body }: { Body: unknown }) =>
        Promise.resolve({ ErrorCode: "", ErrorMessage: "", Headers: {}, Body: answer(plain(Body)) }),
    }),
  };
}

/** A request as it crosses to another process. */
function plain(body: unknown): RequestBody {
  return JSON.parse(JSON.stringify(body)) as RequestBody; // the library's own protocol
}

/** Puts the library where the add-in's code expects it. */
export function makeGlobal({ window }: GenuineOffice): void {
  Object.assign(globalThis, { Excel: window.Excel, Office: window.Office, CustomFunctions: window.CustomFunctions });
}

async function until(ready: () => boolean): Promise<void> {
  for (let tries = 0; tries < 1000; tries++) {
    if (ready()) return;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  throw new Error("The Office library did not load.");
}
