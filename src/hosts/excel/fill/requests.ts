/** Excel on the web takes 5 MB a request; what is not counted here (paths, property names) needs room as well. */
const mostBytes = 4_000_000;

/** Above what setting one property of one object costs in a request: about 95 in the starters. */
const bytesPerStep = 150;

/** Gathers work into few requests, each small enough for Excel on the web. Nothing is recalculated in between. */
export class Requests {
  private gathered = 0;

  constructor(
    readonly context: Excel.RequestContext,
    private readonly limit = mostBytes,
  ) {}

  /** Announces work: sends what is waiting first when both together would be too much for one request. */
  async makeRoom(work: { readonly bytes: number } | { readonly steps: number }): Promise<void> {
    const bytes = "bytes" in work ? work.bytes : work.steps * bytesPerStep;
    if (this.gathered > 0 && this.gathered + bytes > this.limit) await this.send();
    if (this.gathered === 0) this.context.application.suspendApiCalculationUntilNextSync();
    this.gathered += bytes;
  }

  async send(): Promise<void> {
    if (this.gathered === 0) return;
    this.gathered = 0;
    await this.context.sync();
  }

  sheet(name: string): Excel.Worksheet {
    return this.context.workbook.worksheets.getItem(name);
  }
}
