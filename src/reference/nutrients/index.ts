import { forageRemoval } from "./removal-forage";
import { grainRemoval } from "./removal-grain";
import { residueRemoval } from "./removal-residue";
import { rootAndFiberRemoval } from "./removal-roots-and-fiber";

export { dryResidue, type DryResidueRow } from "./dry-residue";
export { nutrientKeys, nutrients, type NutrientKey } from "./nutrients";
export { parts, type JoinedPart, type PartKey, type SinglePart } from "./parts";
export type { RemovalRow } from "./removal-row";
export { removalSets, type RemovalSetKey } from "./removal-sets";
export { testChange, testChangeRange, type TestChangeRow } from "./test-change";

/** Every published removal row. */
export const removalRows = [grainRemoval, residueRemoval, forageRemoval, rootAndFiberRemoval].flatMap(
  ({ rows }) => rows,
);
