import { spawn, type ChildProcess } from "node:child_process";
import path from "node:path";

/** `npm start` itself, on the built pages. */
const project = path.resolve(__dirname, "../..");
let program: ChildProcess;

afterEach(() => program.kill());

function startedAddress(): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    program = spawn(process.execPath, ["src/build/start.mjs"], { cwd: project, env: { ...process.env, CI: "true" } });
    program.stdout?.on("data", (text: Buffer) => {
      said += text.toString();
      const address = /http:\/\/localhost:\d+\//.exec(said);
      if (address) resolve(address[0]);
    });
    program.once("exit", () => reject(new Error(`npm start ended: ${said}`)));
  });
}

it("npm start prints the address of the workbook, and all that the page asks for is there", async () => {
  const address = await startedAddress();
  const page = await fetch(address);
  expect(page.status).toBe(200);
  const html = await page.text();
  expect(html).toContain("<title>Loamsheet workbook</title>");
  const parts = [...html.matchAll(/(?:src|href)="([^"#]+)"/g)].map(([, part = ""]) => new URL(part, address).href);
  expect(parts.length).toBeGreaterThan(2);
  for (const part of parts) expect([part, (await fetch(part)).status]).toEqual([part, 200]);
}, 300_000);
