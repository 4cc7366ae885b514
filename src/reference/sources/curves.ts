import type { Source } from "./source";

/** Publications on response curves and on choosing among models of them. */
export const curveSources = {
  "heady-pesek-brown-1955": {
    publisher: "Iowa Agricultural Experiment Station",
    title: "Research Bulletin 424, Crop Response Surfaces and Economic Optima in Fertilizer Use (Heady, Pesek, Brown)",
    year: "1955",
  },
  "hurvich-tsai-1989": {
    publisher: "Biometrika",
    title: "76:297, Regression and time series model selection in small samples (Hurvich, Tsai)",
    year: "1989",
  },
} as const satisfies Record<string, Source>;
