import http from "node:http";
import path from "node:path";
import { projectFolder } from "./install.mjs";

/**
 * Serves dist on this machine only.
 *
 * @param {number} wanted the port to try first; any free one is taken when it is busy
 * @returns the address and a way to stop
 */
export async function serveDist(wanted = 0) {
  const server = http.createServer(await answerFromDist());
  const port = await listen(server, wanted).catch(() => listen(server, 0));
  return { address: `http://localhost:${port}/`, stop: () => server.close() };
}

/**
 * What answers a request with a file of dist. Pages, scripts and data are asked for anew each time, so that a new
 * build shows at once.
 *
 * @param {{ key: string, value: string }[]} headers sent with every file besides
 */
export async function answerFromDist(headers = []) {
  const { default: handler } = await import("serve-handler");
  return (request, response) =>
    handler(request, response, {
      public: path.join(projectFolder, "dist"),
      cleanUrls: false,
      rewrites: [{ source: "/", destination: "/index.html" }],
      directoryListing: false,
      headers: [
        { source: "**/*.@(html|js|json|css)", headers: [{ key: "Cache-Control", value: "no-cache" }] },
        ...(headers.length > 0 ? [{ source: "**", headers }] : []),
      ],
    });
}

/** Resolves with the port once the server listens on it, to this machine alone. */
export function listen(server, port) {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "localhost", () => {
      server.removeListener("error", reject);
      resolve(server.address().port);
    });
  });
}
