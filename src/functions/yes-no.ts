import { vocabulary } from "./frame";

const yes = ["y", "true", "x", "1"];
const no = ["n", "false", "0"];

/** Words for yes and no, with further ones that mean the same where they are asked. */
export function yesNoWords(
  name: string,
  also: { readonly yes: readonly string[]; readonly no: readonly string[] } = { yes: [], no: [] },
) {
  return vocabulary<"yes" | "no">(name, {
    yes: { label: "yes", also: [...yes, ...also.yes] },
    no: { label: "no", also: [...no, ...also.no] },
  });
}
