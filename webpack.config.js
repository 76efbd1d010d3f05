/**
 * Three pieces come out of one build:
 *   add-in:    functions.js, functions.json, taskpane.html, manifest.xml, icons and the help pages
 *   workbench: index.html, the page with the embedded spreadsheet
 * Types are checked by `npm run check`, not here, so that a first start is quick.
 */
import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import HtmlWebpackPlugin from "html-webpack-plugin";
import TerserPlugin from "terser-webpack-plugin";
import { tsImport } from "tsx/esm/api";
import webpack from "webpack";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** Where the add-in is served while it is being developed. manifest.xml is written for this. */
const localBase = "https://localhost:3001/";

/** Adds files made in memory or read from the project to what the build writes. */
class ExtraFiles {
  constructor(files) {
    this.files = files;
  }
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("ExtraFiles", (compilation) =>
      compilation.hooks.processAssets.tapPromise(
        { name: "ExtraFiles", stage: webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL },
        async () => {
          for (const [name, content] of Object.entries(await this.files())) {
            compilation.emitAsset(name, new webpack.sources.RawSource(content));
          }
        },
      ),
    );
  }
}

const common = (mode) => ({
  mode,
  devtool: mode === "development" ? "source-map" : false,
  resolve: { extensions: [".ts", ".tsx", ".js"] },
  module: {
    rules: [
      { test: /\.tsx?$/, loader: "ts-loader", options: { transpileOnly: true } },
      { test: /\.css$/, type: "css/auto" },
    ],
  },
  experiments: { css: true },
  performance: { hints: false },
  optimization: {
    minimizer: [new TerserPlugin({ minify: TerserPlugin.esbuildMinify, extractComments: false })],
  },
});

async function addInFiles(base) {
  const { catalogue } = await tsImport("./src/functions/catalogue.ts", import.meta.url);
  const { functionsJson } = await tsImport("./src/functions/metadata.ts", import.meta.url);
  const { helpSite } = await tsImport("./src/help/site.ts", import.meta.url);
  const icons = readdirSync(here("src/taskpane/icons"));
  return {
    "functions.json": JSON.stringify(functionsJson(catalogue, base), null, 1),
    "manifest.xml": readFileSync(here("manifest.xml"), "utf8").replaceAll(localBase, base),
    ...Object.fromEntries(
      icons.map((name) => [`icons/${name}`, readFileSync(here(`src/taskpane/icons/${name}`))]),
    ),
    ...Object.fromEntries(
      Object.entries(helpSite(catalogue)).map(([name, page]) => [`help/${name}`, page]),
    ),
  };
}

export default (env = {}, { mode = "production" } = {}) => {
  const base = env.base ? `${env.base.replace(/\/+$/, "")}/` : localBase;
  return [
    {
      ...common(mode),
      name: "add-in",
      entry: {
        functions: "./src/functions/register.ts",
        taskpane: "./src/taskpane/start.tsx",
      },
      output: { path: here("dist"), filename: "[name].js" },
      plugins: [
        new ExtraFiles(() => addInFiles(base)),
        new HtmlWebpackPlugin({
          filename: "taskpane.html",
          template: "./src/taskpane/taskpane.html",
          chunks: ["functions", "taskpane"],
          chunksSortMode: "manual",
        }),
      ],
    },
    {
      ...common(mode),
      name: "workbench",
      entry: { workbench: "./src/workbench/start.tsx" },
      output: {
        path: here("dist"),
        filename: "[name].js",
        chunkFilename: "workbench.[name].js",
      },
      plugins: [
        new HtmlWebpackPlugin({
          filename: "index.html",
          template: "./src/workbench/workbench.html",
          chunks: ["workbench"],
        }),
      ],
    },
  ];
};
