import officeAddins from "eslint-plugin-office-addins";
import prettier from "eslint-config-prettier";
import importX from "eslint-plugin-import-x";
import tseslint from "typescript-eslint";

/** Data flows one way: each layer may use only those named after it. */
const layers = ["taskpane", "hosts", "workbook", "functions", "core", "reference"];

const arrows = layers.map((layer, index) => ({
  target: `./src/${layer}`,
  from: [...layers.slice(0, index).map((above) => `./src/${above}`), "./src/build"],
  message: "Arrows point down only: taskpane → hosts → workbook → functions → core → reference.",
}));

const officeOnlyInItsHost = {
  "no-restricted-globals": [
    "error",
    ..."Office Excel OfficeExtension CustomFunctions OfficeRuntime".split(" ").map((name) => ({
      name,
      message: "Only src/hosts/excel and the pane's Excel entry may touch Office.",
    })),
  ],
};

const pureCore = {
  "no-restricted-globals": [
    "error",
    "window",
    "document",
    "localStorage",
    "fetch",
    "Office",
    "Excel",
    "CustomFunctions",
  ],
  "no-restricted-properties": [
    "error",
    { object: "Math", property: "random", message: "Core takes a seed." },
    { object: "Date", property: "now", message: "Core has no clock." },
  ],
};

/** Of the plugin's settings only its own rules: its recommended set also carries older copies of others. */
const officeRules = Object.fromEntries(
  officeAddins.configs.recommended
    .flatMap(({ rules }) => Object.entries(rules ?? {}))
    .filter(([name]) => name.startsWith("office-addins/")),
);
if (Object.keys(officeRules).length === 0) throw new Error("eslint-plugin-office-addins brought no rules.");

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "sample-workbooks/", ".cache/", "coverage/"] },
  ...tseslint.configs.recommended,
  {
    plugins: { "import-x": importX },
    settings: { "import-x/resolver": { node: { extensions: [".ts", ".tsx", ".js", ".mjs"] } } },
    rules: {
      "import-x/no-restricted-paths": ["error", { zones: arrows }],
      "import-x/no-cycle": "error",
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/no-non-null-assertion": "error",
      "max-lines": ["warn", { max: 300, skipBlankLines: true, skipComments: true }],
      "max-lines-per-function": ["warn", { max: 60, skipBlankLines: true, skipComments: true }],
      "no-restricted-imports": ["error", { paths: [{ name: "lodash", message: "Not used here." }] }],
      eqeqeq: "error",
    },
  },
  {
    files: ["src/**/*.ts", "src/**/*.tsx"],
    ignores: ["src/hosts/excel/**", "src/taskpane/excel-entry.ts"],
    rules: officeOnlyInItsHost,
  },
  { files: ["src/core/**", "src/reference/**"], rules: pureCore },
  {
    files: ["src/hosts/excel/**/*.ts", "src/taskpane/excel-entry.ts"],
    plugins: { "office-addins": officeAddins },
    rules: officeRules,
  },
  { files: ["**/*.js", "**/*.mjs"], rules: { "@typescript-eslint/no-require-imports": "off" } },
  { files: ["src/reference/**", "test/**"], rules: { "max-lines": "off", "max-lines-per-function": "off" } },
  prettier,
);
