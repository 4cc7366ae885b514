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
  window.OSF._OfficeAppFactory.setContext(contextOf(level));
  return { window, close: () => dom.window.close() };
}

/** The library checks every member it offers against what the host says it supports. */
function contextOf(level: number): typeof Office.context {
  const isSetSupported = (name: string, version = "1.1") =>
    name !== "ExcelApi" || Number(version.split(".")[1]) <= level;
  return { requirements: { isSetSupported } } as unknown as typeof Office.context; // all that is used of it
}

/** Lets a host in memory answer every request from now on. */
export function answerRequests({ window }: GenuineOffice, answer: Answer): { select(): void } {
  const listeners: (() => void)[] = [];
  window.OfficeExtension.SessionBase._overrideSession = {
    _resolveRequestUrlAndHeaderInfo: () => Promise.resolve(null),
    getEventRegistration: () => ({
      register: (_event: number, _target: string, listener: () => void) => Promise.resolve(listeners.push(listener)),
    }),
    _createRequestExecutorOrNull: () => ({
      executeAsync: (_data: unknown, _flags: number, { Body }: { Body: unknown }) =>
        Promise.resolve({ ErrorCode: "", ErrorMessage: "", Headers: {}, Body: answer(plain(Body)) }),
    }),
  };
  return { select: () => listeners.forEach((listener) => listener()) };
}

/** Whether a request only lets go of ranges, which the library sends on its own some time after the work. */
export function isCleaningUp({ Actions }: RequestBody): boolean {
  return Actions.every(({ Name }) => Name === "_RemoveReference");
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
