/** About. */
export const about = {
  title: "About",
  what: [
    "Loamsheet puts agronomy functions into the workbook you plan in, under the name LOAM, and writes starter workbooks for a farm, a client or one quick question.",
    "Every answer can show its steps and its source.",
  ],
  dataHead: "Your figures",
  data: {
    excel: "Your figures stay in your workbook. Loamsheet sends nothing anywhere and keeps no copy.",
    browser:
      "Your figures stay in this browser. Loamsheet sends nothing anywhere; what you save is a file on your own machine.",
  },
  kept: "This pane remembers what you typed into Start a workbook, what you tried under What if, your strip trial and which functions you opened lately, on this machine only, so that you find them again.",
  forget: "Empty all of it and forget it",
  forgotten: "Everything is empty and nothing is remembered.",
  loadingHead: "When this workbook opens",
  loads: "Load Loamsheet with this workbook",
  loadsHint:
    "Off unless you turn it on. The choice is kept in the workbook: its formulas then answer without the pane being opened first, for everyone who has Loamsheet.",
  checkHead: "Is Loamsheet in order?",
  check: "Check Loamsheet",
  program: (program: string, version: string) => `${program}, Loamsheet ${version}.`,
  registered: (known: number, all: number) => `Functions registered: ${known} of ${all}.`,
  absent: (names: readonly string[]) =>
    `Not registered: ${names.join(", ")}. Close Loamsheet and open it again; if that does not help, install it anew.`,
  examples: (right: number, all: number) => `Examples that come out as printed, one a family: ${right} of ${all}.`,
  wrong: (names: readonly string[]) =>
    `Not as printed: ${names.join(", ")}. Do not rely on them until this is mended; report it with this line.`,
  nothingMissing: "Nothing that Loamsheet uses is missing here.",
  mindHead: "What to mind",
  estimates:
    "These are planning estimates from published guides, as good as the samples, prices and yields you put in.",
  cautions: [
    "Pesticides: the product label is the law. It overrides any rate, mix or interval computed here.",
    "Anhydrous ammonia, treated seed, machinery and trenching can injure or kill. Follow the training, the label and the codes that apply where you farm.",
    "Nutrient, manure and drainage rules differ by state and watershed. Ask your extension office, conservation district or a certified crop adviser.",
  ],
  licenceHead: "License and version",
  licence: "Open source under the MIT license, without warranty.",
  licences: "Licenses of the packages it is built with",
  version: (version: string) => `Version ${version}`,
};
