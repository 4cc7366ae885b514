import { onRibbon } from "../../../src/hosts/excel/ribbon";
import { canOpenByItself, startup } from "../../../src/hosts/excel/startup";

type Command = (event: { completed(): void }) => Promise<void>;

/** The parts of Office that a ribbon and a workbook that loads us need. */
function office(changes: { addin?: object | undefined; runtime?: boolean } = {}) {
  const commands = new Map<string, Command>();
  const done: string[] = [];
  let behavior = "None";
  const addin = {
    showAsTaskpane: async () => void done.push("shown"),
    getStartupBehavior: async () => behavior,
    setStartupBehavior: async (to: string) => void (behavior = to),
  };
  const Office = {
    actions: { associate: (name: string, command: Command) => void commands.set(name, command) },
    addin: "addin" in changes ? changes.addin : addin,
    StartupBehavior: { load: "Load", none: "None" },
    context: { requirements: { isSetSupported: () => changes.runtime ?? true } },
  };
  Object.assign(globalThis, { Office });
  return { commands, done };
}

describe("a button of the ribbon", () => {
  it("shows the pane, opens its part, and lets Excel go on", async () => {
    const { commands, done } = office();
    onRibbon((view) => done.push(view));
    await commands.get("openCheck")?.({ completed: () => void done.push("completed") });
    await commands.get("openFind")?.({ completed: () => void done.push("completed") });
    expect(done).toEqual(["shown", "check", "completed", "shown", "find", "completed"]);
  });

  it("lets Excel go on when the pane cannot be shown", async () => {
    const showAsTaskpane = async () => Promise.reject(new Error("closed"));
    const { commands, done } = office({ addin: { showAsTaskpane } });
    onRibbon((view) => done.push(view));
    const pressed = commands.get("openCheck")?.({ completed: () => void done.push("completed") });
    await expect(pressed).rejects.toThrow("closed");
    expect(done).toEqual(["completed"]);
  });
});

describe("loading with the workbook", () => {
  it("is off, goes on and off, and is told by Excel itself", async () => {
    office();
    expect(canOpenByItself()).toBe(true);
    expect(await startup.isOn()).toBe(false);
    await startup.set(true);
    expect(await startup.isOn()).toBe(true);
    await startup.set(false);
    expect(await startup.isOn()).toBe(false);
  });

  it.each([{ addin: undefined }, { addin: {} }, { runtime: false }])(
    "is not offered where Excel lacks it: %j",
    (lacks) => {
      office(lacks);
      expect(canOpenByItself()).toBe(false);
    },
  );

  it("says what Excel says when it refuses", async () => {
    const refuse = async () => Promise.reject(Object.assign(new Error("no"), { code: "AccessDenied" }));
    office({ addin: { getStartupBehavior: refuse, setStartupBehavior: refuse } });
    await expect(startup.set(true)).rejects.toMatchObject({ message: expect.stringMatching(/protected or open/) });
  });
});
