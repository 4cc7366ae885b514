const start = "argument-";

/** Id of the box of an argument. */
export function fieldId(argument: string): string {
  return start + argument;
}

export function argumentOf(field: string): string | undefined {
  return field.startsWith(start) ? field.slice(start.length) : undefined;
}

/** Id of the button that takes what is selected in the sheet. */
export function pickId(argument: string): string {
  return `pick-${argument}`;
}
