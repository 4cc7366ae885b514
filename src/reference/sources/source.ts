/** A publication behind our numbers. */
export interface Source {
  readonly publisher: string;
  readonly title: string;
  readonly year: string;
}
