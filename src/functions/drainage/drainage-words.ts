import { conductivityTextures, type ConductivityTextureKey } from "../../reference/drainage/conductivity";
import { pipeKinds, sediments, type PipeKindKey, type SedimentKey } from "../../reference/drainage/pipes";
import {
  drainageLevels,
  drainCrops,
  drainSoils,
  spacingSoils,
  surfaceInlets,
  type DrainageLevelKey,
  type DrainCropKey,
  type DrainSoilKey,
  type SpacingSoilKey,
  type SurfaceInletKey,
} from "../../reference/drainage/rules";
import { vocabulary } from "../frame";

/** The closed word lists of this family. */
export const conductivityTextureWords = vocabulary<ConductivityTextureKey>(
  "conductivity texture",
  conductivityTextures,
);
export const pipeKindWords = vocabulary<PipeKindKey>("drain pipe", pipeKinds);
export const sedimentWords = vocabulary<SedimentKey>("drain sediment", sediments);
export const drainSoilWords = vocabulary<DrainSoilKey>("drained soil", drainSoils);
export const drainCropWords = vocabulary<DrainCropKey>("drained crop", drainCrops);
export const surfaceInletWords = vocabulary<SurfaceInletKey>("surface inlet", surfaceInlets);
export const spacingSoilWords = vocabulary<SpacingSoilKey>("spacing soil", spacingSoils);
export const drainageLevelWords = vocabulary<DrainageLevelKey>("drainage level", drainageLevels);
