import type { PaneEnvironment, PreferenceStorage } from "./environment";

const keys = {
  form: "loamsheet.pane",
  recent: "loamsheet.recent",
  whatIf: "loamsheet.what-if",
  trial: "loamsheet.trial",
} as const;

/** What the pane remembers between visits. Storage may be missing, full or refused: then it remembers nothing. */
interface Memory {
  recall(): unknown;
  keep(value: unknown): void;
  forget(): void;
}

/** What is remembered apart: the form that starts a workbook, functions opened lately, what was tried, the trial. */
type Remembered = keyof typeof keys;

export const remembered: readonly Remembered[] = ["form", "recent", "whatIf", "trial"];

export function memoryOf(environment: PaneEnvironment, part: Remembered): Memory {
  const place = (environment.storagePrefix ?? "") + keys[part];
  return {
    recall: () =>
      trying(environment, (storage) => {
        const text = storage.getItem(place);
        return text === null ? undefined : (JSON.parse(text) as unknown);
      }),
    keep: (value) => void trying(environment, (storage) => storage.setItem(place, JSON.stringify(value))),
    forget: () => void trying(environment, (storage) => storage.removeItem(place)),
  };
}

function trying<T>(environment: PaneEnvironment, act: (storage: PreferenceStorage) => T): T | undefined {
  try {
    const storage = environment.storage?.();
    return storage && act(storage);
  } catch {
    return undefined;
  }
}
