import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";

const programs = ["/usr/bin/soffice", "/usr/lib/libreoffice/program/soffice", "/opt/homebrew/bin/soffice"];

/** LibreOffice, where it is installed. */
export function findOffice(): string | undefined {
  return [process.env["SOFFICE"] ?? "", ...programs].find((program) => program !== "" && existsSync(program));
}

/** Makes every formula of a workbook be worked out on opening, whatever the file says it showed. */
const calculatesOnOpening = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** A folder of its own and a LibreOffice profile of its own; both gone when done. */
export class Office {
  readonly folder = mkdtempSync(path.join(tmpdir(), "loamsheet-office-"));
  private readonly profile = path.join(this.folder, "profile");

  constructor(
    private readonly program: string,
    { recalculates = false }: { recalculates?: boolean } = {},
  ) {
    mkdirSync(path.join(this.profile, "user"), { recursive: true });
    if (recalculates) writeFileSync(path.join(this.profile, "user/registrymodifications.xcu"), calculatesOnOpening);
  }

  /** Converts a file of the folder; gives the path of what came out. */
  convert(file: string, format: string, outFolder = this.folder): string {
    execFileSync(
      this.program,
      [
        `-env:UserInstallation=${pathToFileURL(this.profile).href}`,
        "--headless",
        "--convert-to",
        format,
        "--outdir",
        outFolder,
        file,
      ],
      { stdio: "ignore", timeout: 120_000 },
    );
    return path.join(outFolder, `${path.basename(file, path.extname(file))}.${format}`);
  }

  /** Pages of a workbook as pictures, in order. */
  pages(file: string, dotsPerInch: number): string[] {
    const pdf = this.convert(file, "pdf");
    const stem = pdf.replace(/\.pdf$/, "-page");
    execFileSync("pdftoppm", ["-r", String(dotsPerInch), "-png", pdf, stem]);
    const made = readdirSync(this.folder).filter((name) => name.startsWith(path.basename(stem)));
    return made.sort().map((name) => path.join(this.folder, name));
  }

  /** The words on each page of a PDF. */
  texts(pdf: string): string[] {
    const all = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" });
    return all.split("\f").slice(0, -1);
  }

  close(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
