/** Why the working of a cell cannot be shown, in a sentence for the person. */
export class CannotShow extends Error {
  constructor(message: string) {
    super(message);
    this.name = "CannotShow";
  }
}
