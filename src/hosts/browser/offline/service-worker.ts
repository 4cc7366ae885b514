/**
 * Keeps the page working without a network. What the server has is always asked for first, so that a new build shows
 * at once; what was kept stands in when no answer comes.
 */
const cacheName = "loamsheet";
const listName = "offline.json";

/** What this needs of the worker's own events, which the page's type library does not know. */
interface WaitingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface AskedEvent extends WaitingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

addEventListener("install", (event) => (event as WaitingEvent).waitUntil(keepAll()));
// The page says hello at each start: by then a newer build may be there.
addEventListener("message", (event) => (event as MessageEvent & WaitingEvent).waitUntil(keepAll()));
addEventListener("fetch", (event) => {
  const { request } = event as AskedEvent;
  const isOurs = request.method === "GET" && new URL(request.url).origin === location.origin;
  if (isOurs) (event as AskedEvent).respondWith(freshOrKept(request));
});

/** Fetches every file of the page, unless the list of them is the one already kept. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(cacheName);
  const list = await fetch(listName, { cache: "no-cache" });
  if (!list.ok) return;
  const text = await list.clone().text();
  const kept = await cache.match(listName);
  if (kept && (await kept.text()) === text) return;
  const { files } = JSON.parse(text) as { files: string[] };
  await cache.addAll(files);
  // Last, because it says that all the others are there.
  await cache.put(listName, list);
}

async function freshOrKept(request: Request): Promise<Response> {
  try {
    return await fetch(request);
  } catch (unreachable) {
    const kept = await caches.match(request, { ignoreSearch: true });
    if (kept) return kept;
    throw unreachable;
  }
}

export {};
