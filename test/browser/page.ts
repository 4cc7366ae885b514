import { createReadStream, existsSync } from "node:fs";
import http from "node:http";
import path from "node:path";
import { chromium, type Browser, type BrowserContext, type Page } from "playwright-core";
import type { WorkbookHost } from "../../src/hosts/port";

declare global {
  interface Window {
    /** Put there by the page for tests: a drawn grid cannot be read otherwise. */
    loamsheet?: WorkbookHost;
  }
}

export const builtFolder = process.env["LOAMSHEET_DIST"] ?? path.resolve(__dirname, "../../dist");
const browserPath = process.env["CHROMIUM"] ?? "/usr/bin/chromium";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".png": "image/png",
};

/** The built pages in a real browser, served from this machine. */
export interface BuiltPages {
  readonly address: string;
  /**
   * Opens a page in a browser that remembers nothing; options are those of a playwright context. "index.html" opens to an
   * empty workbook, "" as a person's first visit does.
   */
  open(file: string, options?: Parameters<Browser["newContext"]>[0]): Promise<OpenedPage>;
  /**
   * The same page with all that it kept and complained of forgotten, opened to an empty workbook: far quicker than another
   * context, for which the scripts would be compiled anew.
   */
  renew(opened: OpenedPage): Promise<void>;
  /** Takes the server away and leaves the browser open, as when the network goes. */
  unplug(): Promise<void>;
  stop(): Promise<void>;
}

export interface OpenedPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What went wrong in the page so far: exceptions and console errors. */
  readonly troubles: string[];
  /** Addresses asked for outside the page's own server. */
  readonly foreign: string[];
}

export async function serveBuiltPages(): Promise<BuiltPages> {
  const server = http.createServer(answer);
  await new Promise<void>((resolve) => server.listen(0, "localhost", resolve));
  const place = server.address();
  const port = typeof place === "object" && place ? place.port : 0;
  const address = `http://localhost:${port}/`;
  const browser = await chromium.launch({
    executablePath: browserPath,
    args: ["--no-sandbox", "--disable-gpu", "--headless"],
  });
  const unplug = async () => {
    server.closeAllConnections();
    if (server.listening) await new Promise((resolve) => server.close(resolve));
  };
  return {
    address,
    open: (file, options) => openPage(browser, address, file, options),
    renew: (opened) => renewPage(opened, address),
    unplug,
    async stop() {
      await browser.close();
      await unplug();
    },
  };
}

async function openPage(
  browser: Browser,
  address: string,
  file: string,
  options: Parameters<Browser["newContext"]>[0],
): Promise<OpenedPage> {
  const context = await browser.newContext({
    viewport: { width: 1366, height: 820 },
    // Keeping ten megabytes for later would slow down every test that does not ask for it.
    serviceWorkers: "block",
    ...options,
  });
  const page = await context.newPage();
  const troubles: string[] = [];
  const foreign: string[] = [];
  page.on("pageerror", (error) => troubles.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") troubles.push(`${message.text()} ${message.location().url}`);
  });
  page.on("request", (request) => {
    if (!request.url().startsWith(address) && !/^(data|blob):/.test(request.url())) foreign.push(request.url());
  });
  await page.goto(address + (file === "index.html" ? `${file}#empty` : file));
  return { page, context, troubles, foreign };
}

async function renewPage({ page, context, troubles, foreign }: OpenedPage, address: string): Promise<void> {
  for (const other of context.pages()) if (other !== page) await other.close();
  // A small file of the same place, from which what was kept there can be deleted.
  await page.goto(`${address}offline.json`);
  await page.evaluate(async () => {
    localStorage.clear();
    for (const { name = "" } of await indexedDB.databases())
      await new Promise<void>((resolve, reject) => {
        const deleting = indexedDB.deleteDatabase(name);
        deleting.onsuccess = () => resolve();
        deleting.onerror = () => reject(deleting.error);
      });
  });
  troubles.length = foreign.length = 0;
  await page.goto(`${address}index.html#empty`);
}

function answer(request: http.IncomingMessage, response: http.ServerResponse): void {
  const asked = new URL(request.url ?? "/", "http://localhost").pathname;
  // Asked for by the browser itself beside a file that names no icon, late on a busy machine.
  if (asked === "/favicon.ico") return void response.writeHead(204).end();
  const file = path.join(builtFolder, path.normalize(asked === "/" ? "/index.html" : asked));
  if (!file.startsWith(builtFolder) || !existsSync(file)) {
    response.writeHead(404).end();
    return;
  }
  response.writeHead(200, { "Content-Type": types[path.extname(file)] ?? "application/octet-stream" });
  createReadStream(file).pipe(response);
}

/** Waits until a condition holds in the test, asking again and again. */
export async function until(holds: () => Promise<boolean> | boolean, what: string, seconds = 30): Promise<void> {
  const end = Date.now() + seconds * 1000;
  while (Date.now() < end) {
    if (await holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`Waited ${seconds} s in vain until ${what}.`);
}
