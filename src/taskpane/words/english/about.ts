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
  kept: "This pane remembers what you typed into Start a workbook and which functions you opened lately, on this machine only, so that you find them again.",
  forget: "Empty the form and forget it",
  forgotten: "The form is empty and nothing is remembered.",
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
  version: (version: string) => `Version ${version}`,
};
