/**
 * Has the browser keep the page's files, so that it opens without a network too. Browsers without that ability, and
 * pages not served over https or from this machine, go on as before.
 *
 * @returns whether the page will open without a network
 */
export async function keepOffline(): Promise<boolean> {
  if (!("serviceWorker" in navigator)) return false;
  try {
    await navigator.serviceWorker.register("service-worker.js");
    const registration = await navigator.serviceWorker.ready;
    registration.active?.postMessage("hello");
    return true;
  } catch {
    return false;
  }
}
