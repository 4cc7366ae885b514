import type * as axe from "axe-core";
import type { FakeHost } from "./fake-host";

declare global {
  interface Window {
    host: FakeHost;
    axe: typeof axe;
  }
}
