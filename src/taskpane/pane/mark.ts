import { drawing } from "./element";

/**
 * The mark beside the name: one worksheet cell cut through a soil profile. The same shapes as the icons; a test
 * holds the two together. Its two tones come from the stylesheet.
 */
const markLayers = {
  topsoil:
    "4,4 60,4 60,19.61 56.5,18.61 53,17.95 49.5,17.72 46,17.94 42.5,18.57 39,19.56 35.5,20.76 32,22.04 28.5,23.24 25,24.2 21.5,24.81 18,25 14.5,24.73 11,24.05 7.5,23.04 4,21.82",
  parent:
    "4,38.3 7.5,39.36 11,40.76 14.5,42.33 18,43.86 21.5,45.17 25,46.1 28.5,46.54 32,46.42 35.5,45.77 39,44.66 42.5,43.23 46,41.66 49.5,40.14 53,38.86 56.5,37.98 60,37.61 60,60 4,60",
} as const;

export function mark(): SVGSVGElement {
  return drawing(
    "svg",
    { class: "mark", viewBox: "0 0 64 64", width: 24, height: 24, "aria-hidden": "true", focusable: "false" },
    drawing("polygon", { class: "mark-cell", points: "0,0 64,0 64,64 0,64" }),
    drawing("polygon", { class: "mark-layer", points: markLayers.topsoil }),
    drawing("polygon", { class: "mark-layer", points: markLayers.parent }),
  );
}
