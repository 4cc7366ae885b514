import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { buildSync } from "esbuild";
import { chromium, type Browser, type BrowserContextOptions, type Page } from "playwright-core";

const project = path.resolve(__dirname, "../..");

/** The pages' own rule: nothing inline, nothing from elsewhere. */
const policy = "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'";

const html = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<title>Pane</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="harness.css">
<script defer src="harness.js"></script>
</head>
<body><div id="pane"></div></body>
</html>`;

const kinds: Readonly<Record<string, string>> = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css" };

/** A page with what the browser complained about while it was open. */
export interface WatchedPage {
  readonly page: Page;
  readonly complaints: readonly string[];
}

/** Builds the harness, serves it and opens it in a real browser. */
export class PanePages {
  private constructor(
    private readonly folder: string,
    private readonly server: Server,
    private readonly browser: Browser,
  ) {}

  static async open(): Promise<PanePages> {
    const folder = mkdtempSync(path.join(tmpdir(), "loamsheet-pane-"));
    writeFileSync(path.join(folder, "index.html"), html);
    buildSync({
      entryPoints: [path.join(__dirname, "harness.ts")],
      bundle: true,
      outfile: path.join(folder, "harness.js"),
      logLevel: "error",
      // As the build does: the page's content policy forbids what this package tries.
      alias: {
        "@stdlib/assert-has-generator-support": path.join(project, "src/build/stand-ins/has-generator-support.js"),
      },
    });
    const server = createServer((request, response) => {
      const name = path.basename(new URL(request.url ?? "/", "http://localhost").pathname) || "index.html";
      response.setHeader("Content-Type", kinds[path.extname(name)] ?? "text/plain");
      response.end(readFileSync(path.join(folder, name)));
    });
    await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
    const browser = await chromium.launch({
      executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
      args: ["--no-sandbox", "--disable-gpu"],
    });
    return new PanePages(folder, server, browser);
  }

  /** A fresh pane with nothing remembered. */
  async page(options: BrowserContextOptions & { kind?: "excel" | "browser" } = {}): Promise<WatchedPage> {
    const { kind = "excel", ...context } = options;
    // The pages of earlier tests would go on working beside this one.
    for (const earlier of this.browser.contexts()) await earlier.close();
    const page = await (await this.browser.newContext({ viewport: { width: 320, height: 700 }, ...context })).newPage();
    const complaints: string[] = [];
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    page.on("pageerror", (error) => complaints.push(error.message));
    await page.goto(`http://127.0.0.1:${(this.server.address() as AddressInfo).port}/?kind=${kind}`);
    await page.waitForSelector(".notebook");
    return { page, complaints };
  }

  async close(): Promise<void> {
    await this.browser.close();
    await new Promise((closed) => this.server.close(closed));
    rmSync(this.folder, { recursive: true, force: true });
  }
}
