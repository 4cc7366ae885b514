import type { Source } from "./source";

/** Publications on seed, stand, protection, cover, machinery and harvest. */
export const seedSources = {} as const satisfies Record<string, Source>;
