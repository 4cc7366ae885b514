import { refuseArgument } from "../../fault";
import { within } from "../../limit";
import { soilKinds, type LimeForm, type LimeMethod, type SoilKindKey } from "../../../reference/soil";

/** Refuses a target the method does not print, naming those it does. */
export function checkTarget(method: LimeMethod, targetPh: number): void {
  const published = publishedTargets(method.form);
  if (published === undefined) {
    const max = method.highestTarget ?? 8;
    within(`targetPH for ${method.label}`, targetPh, { min: 4.5, max, unit: "" });
    return;
  }
  if (published.includes(targetPh)) return;
  refuseArgument(
    "targetPH",
    `${method.label} publishes lime to pH ${published.map((ph) => ph.toFixed(1)).join(", ")}; got ${targetPh}.`,
  );
}

export function publishedTargets(form: LimeForm): readonly number[] | undefined {
  switch (form.kind) {
    case "lines":
      return form.lines.map(({ targetPh }) => targetPh);
    case "depthCurve":
      return form.curves.map(({ targetPh }) => targetPh);
    case "exchangeableAcidity":
      return form.targets.map(({ targetPh }) => targetPh);
    case "table":
      return [...form.targets].sort((a, b) => a - b);
    default:
      return undefined;
  }
}

export function checkSoil(method: LimeMethod, soil: SoilKindKey): void {
  if (method.soils.includes(soil)) return;
  refuseArgument(
    "soil",
    `${method.label} publishes lime for ${method.soils.map((kind) => soilKinds[kind].label).join(" and ")} soil only.`,
  );
}

/**
 * Asks whether soil pH and buffer pH changed places. An acid soil pulls the buffer down from above, so a buffer
 * reading well under the soil's own pH does not occur short of neutral.
 */
export function checkOrder(method: LimeMethod, ph: number, bufferPh: number | null): void {
  if (bufferPh === null || !method.buffer) return;
  if (bufferPh < method.buffer.acidUnder && bufferPh < ph - 0.25) {
    refuseArgument(
      "bufferPH",
      `a buffer pH of ${bufferPh} under a soil pH of ${ph} does not occur. Are pH and bufferPH the wrong way round?`,
    );
  }
}

/** Refuses readings outside what the method prints. True where the buffer says no lime at all. */
export function buffersWithoutLime(method: LimeMethod, bufferPh: number | null): boolean {
  if (bufferPh === null || !method.buffer) return false;
  const { min, max, above } = method.buffer;
  if (above === "no lime" && bufferPh > max) return true;
  within(`bufferPH for ${method.label}`, bufferPh, { min, max, unit: "" });
  return false;
}
