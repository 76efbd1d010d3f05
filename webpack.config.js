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

/** The sample logbook as HTML, every value computed, so that the page can be read at once. */
async function workbenchParts() {
  const { plainLogbook } = await tsImport("./src/workbench/plain/build.ts", import.meta.url);
  return { plain: await plainLogbook() };
}

/**
 * The renderer of the embedded spreadsheet can load 77 dictionaries of hyphenation, 5 MB. Cells are not
 * hyphenated, so an empty file stands in for all of them.
 */
const renderer = /@univerjs[\\/]engine-render[\\/]lib[\\/]es$/;
const withoutHyphenation = new webpack.NormalModuleReplacementPlugin(
  /^\.\/[a-z][a-z0-9-]*-[\w-]{8}\.js$/,
  (resource) => {
    if (renderer.test(resource.context)) {
      resource.request = here("src/workbench/grid/no-hyphenation.ts");
    }
  },
);

/** ... and stands in the same chunk, so that nothing is fetched for it. */
const noExtraChunk = {
  test: /engine-render[\\/]lib[\\/]es[\\/]index\.js$/,
  parser: { dynamicImportMode: "eager" },
};

export default (env = {}, { mode = "production" } = {}) => {
  const shared = common(mode);
  const base = env.base ? `${env.base.replace(/\/+$/, "")}/` : localBase;
  return [
    {
      ...common(mode),
      name: "add-in",
      // esbuild is quick but leaves the names of every icon that is not used: 30 kB of nulls
      optimization: { minimizer: [new TerserPlugin({ extractComments: false })] },
      entry: {
        functions: "./src/functions/register.ts",
        taskpane: "./src/taskpane/start.tsx",
      },
      output: { path: here("dist"), filename: "[name].js", chunkFilename: "taskpane.[name].js" },
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
      ...shared,
      name: "workbench",
      module: { rules: [...shared.module.rules, noExtraChunk] },
      // The grid is one chunk: it is all needed, and at once.
      optimization: { ...shared.optimization, splitChunks: false },
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
          templateParameters: workbenchParts,
        }),
        withoutHyphenation,
      ],
    },
  ];
};
