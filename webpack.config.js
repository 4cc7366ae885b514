const path = require("path");
const CopyPlugin = require("copy-webpack-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const TerserPlugin = require("terser-webpack-plugin");
const { IgnorePlugin } = require("webpack");
const gridStyles = require("./src/build/grid-styles/loader");

const officeCdn = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
const officePackage = path.dirname(require.resolve("@microsoft/office-js/dist/office.js"));

/** What the two configurations have in common. */
function common(mode) {
  return {
    mode,
    devtool: false,
    optimization: { minimizer: [new TerserPlugin({ minify: TerserPlugin.swcMinify, extractComments: false })] },
    output: {
      path: path.resolve(__dirname, "dist"),
      filename: "[name].js",
      assetModuleFilename: "assets/[name][ext]",
      // A runtime for functions alone has neither window nor self, and no address to find other files by.
      globalObject: "globalThis",
      publicPath: "",
    },
    resolve: {
      extensions: [".ts", ".tsx", ".js"],
      alias: {
        // Its sources, where what is not used falls away; the package's own entry is one piece.
        "ml-matrix$": path.resolve(__dirname, "node_modules/ml-matrix/src/index.js"),
        "@stdlib/assert-has-generator-support$": path.resolve(
          __dirname,
          "src/build/stand-ins/has-generator-support.js",
        ),
      },
    },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          exclude: /node_modules/,
          loader: "ts-loader",
          options: { transpileOnly: true, compilerOptions: { noEmit: false } },
        },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
        { test: /\.svg$/, type: "asset/resource" },
      ],
    },
    performance: { hints: false },
    cache: {
      type: "filesystem",
      cacheDirectory: path.resolve(__dirname, ".cache/webpack"),
      buildDependencies: { config: [__filename] },
    },
    stats: "errors-warnings",
  };
}

/** The Excel add-in: the functions and the task pane. */
function addIn(mode, selfHosted) {
  const officeScript = selfHosted ? "office/office.js" : officeCdn;
  return {
    ...common(mode),
    name: "add-in",
    entry: {
      functions: "./src/hosts/excel/functions-entry.ts",
      // The pane stands on the functions' own modules, so that the page loads them once.
      taskpane: { import: "./src/taskpane/excel-entry.ts", dependOn: "functions" },
    },
    plugins: [
      new MiniCssExtractPlugin(),
      new HtmlPlugin({
        template: "src/taskpane/taskpane.html",
        filename: "taskpane.html",
        chunks: ["functions", "taskpane"],
        templateParameters: { officeScript },
        scriptLoading: "defer",
        minify: false,
      }),
      ...(selfHosted ? [copyOffice()] : []),
    ],
  };
}

/** office.js may be copied to a server of one's own, but only as it is. */
function copyOffice() {
  const wanted =
    /^(office|o15apptofilemappingtable|es6-promise|excel-[^.]*(?:\.[^.]+)?)\.js$|^telemetry\/|^en-us\/office_strings\.js$/;
  return new CopyPlugin({
    patterns: [
      {
        from: officePackage,
        to: "office",
        filter: (file) =>
          wanted.test(path.relative(officePackage, file).replace(/\\/g, "/")) && !file.includes(".debug."),
        info: { minimized: true },
      },
    ],
  });
}

/** The workbook in the browser, with its own grid; never part of the add-in. */
function browserPage(mode) {
  const settings = common(mode);
  return {
    ...settings,
    name: "browser-page",
    entry: { workbook: "./src/taskpane/browser-entry.ts" },
    module: {
      rules: [...settings.module.rules, gridStyles.rule],
    },
    plugins: [
      new MiniCssExtractPlugin(),
      new HtmlPlugin({
        template: "src/taskpane/browser.html",
        filename: "index.html",
        scriptLoading: "defer",
        minify: false,
      }),
      // The grid brings hyphenation rules of seventy languages; the page speaks English.
      new IgnorePlugin({
        resourceRegExp: /^\.\/(?!en-|index)[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/,
        contextRegExp: /engine-render/,
      }),
    ],
  };
}

/** What keeps the browser page working without a network; a script on its own. */
function offlineWorker(mode) {
  return {
    ...common(mode),
    name: "offline-worker",
    entry: { "service-worker": "./src/hosts/browser/offline/service-worker.ts" },
  };
}

module.exports = (_environment, { mode = "production" }) => {
  const selfHosted = process.env.LOAMSHEET_OFFICE_JS === "self";
  return [addIn(mode, selfHosted), browserPage(mode), offlineWorker(mode)];
};
