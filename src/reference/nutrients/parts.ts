/** The parts of a crop that leave the field, and the joined parts whose residue follows from the grain yield. */
export const parts = {
  grain: { label: "grain", also: ["seed", "kernels", "shelled grain"] },
  straw: { label: "straw", also: [] },
  stover: { label: "stover", also: ["stalks", "fodder", "residue"] },
  silage: { label: "silage", also: ["chopped", "whole plant silage"] },
  hay: { label: "hay", also: ["forage"] },
  root: { label: "root", also: ["beet root"] },
  top: { label: "top", also: ["leaves and crowns"] },
  tuber: { label: "tuber", also: [] },
  lint: { label: "lint", also: ["lint plus seed", "seed cotton"] },
  leaf: { label: "leaf", also: [] },
  nuts: { label: "nuts", also: ["nuts in shell", "pods"] },
  vines: { label: "vines", also: ["peanut hay"] },
  wholePlant: { label: "whole plant", also: ["whole plant at tassel"] },
  "grain+straw": { label: "grain+straw", also: ["straw+grain", "grain and straw"] },
  "grain+stover": { label: "grain+stover", also: ["stover+grain", "grain and stover", "grain+stalks"] },
} as const;

export type PartKey = keyof typeof parts;
export type JoinedPart = "grain+straw" | "grain+stover";
export type SinglePart = Exclude<PartKey, JoinedPart>;
