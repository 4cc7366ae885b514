/** Find a function. */
export const find = {
  title: "Find a function",
  lead: (count: number) => `${count} functions for fields, materials, machines and money. Say what you want to know.`,
  searchLabel: "What do you want to work out?",
  clear: "Clear the search",
  found: (count: number) =>
    count === 0 ? "No function found." : count === 1 ? "1 function found." : `${count} functions found.`,
  nothing:
    "Try another word for it, such as potash, stand, spray, tile or price. Clear the search to see all families.",
  back: "‹ All functions",
  returns: (says: string, unit: string, table: boolean) =>
    `Gives ${says}${unit && !says.includes(unit) ? `, in ${unit}` : ""}.${table ? " The answer fills several cells." : ""}`,
  example: "Example",
  gives: "gives",
  givesTable: "fills these cells:",
  answerTable: "Answer of the example",
  insert: "Put this example into the selected cell",
  inserted: "The example stands in the selected cell. Change its values, or point them to your own cells.",
  arguments: "What goes in",
  optional: " (may be left out)",
  whenBlank: (says: string) => `When left out: ${says}.`,
  eachCell: "Each takes a value or a cell. Give a range instead and the answers fill one cell for each.",
  accepts: (text: string) => `Takes ${text}.`,
  acceptsList: (text: string, atLeast: number) =>
    `A range${atLeast > 1 ? ` of at least ${atLeast} values` : ""}; each cell takes ${text}.`,
  andMore: (labels: readonly string[], more: number) => `${labels.join(", ")} and ${more} more`,
  sources: "Sources",
  moreSources: (more: number) => `${more} more under Sources`,
  arithmetic: "Plain arithmetic; no publication needed.",
};
