/**
 * Three pieces come out of one build:
 *   functions: functions.js, which only calculates, and the same as a script for other spreadsheets
 *   add-in:    functions.json, taskpane.html, manifest.xml, icons, the help pages, install/
 *   workbench: index.html, the page with the embedded spreadsheet
 * Types are checked by `npm run check`, not here, so that a first start is quick.
 */
import { readFileSync, readdirSync } from "node:fs";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import HtmlWebpackPlugin from "html-webpack-plugin";
import { LicenseWebpackPlugin } from "license-webpack-plugin";
import TerserPlugin from "terser-webpack-plugin";
import { tsImport } from "tsx/esm/api";
import webpack from "webpack";
import { stoodInFor } from "./src/cli/build/stand-ins.js";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

const { version } = JSON.parse(readFileSync(here("package.json"), "utf8"));

const { PROCESS_ASSETS_STAGE_ADDITIONAL, PROCESS_ASSETS_STAGE_REPORT } = webpack.Compilation;

/** Adds files made in memory or read from the project to what the build writes. */
class ExtraFiles {
  constructor(files, stage = PROCESS_ASSETS_STAGE_ADDITIONAL) {
    this.files = files;
    this.stage = stage;
  }
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("ExtraFiles", (compilation) =>
      compilation.hooks.processAssets.tapPromise(
        { name: "ExtraFiles", stage: this.stage },
        async (assets) => {
          for (const [name, content] of Object.entries(await this.files(assets))) {
            // as it was made: not to be made small, which would take its comments out
            const info = { minimized: true };
            compilation.emitAsset(name, new webpack.sources.RawSource(content), info);
          }
        },
      ),
    );
  }
}

/**
 * Once every part of a build for production is written: nothing local left, sums, sizes. Only the add-in
 * holds the address it is made for: `--config-name add-in` gives a folder that is whole another address.
 */
class Finish {
  parts = 0;
  waiting = 0;
  made = new Set();
  constructor(folder, base) {
    this.build = { folder, base, made: this.made };
  }
  apply(compiler) {
    this.parts += 1;
    this.waiting += 1;
    compiler.hooks.afterEmit.tapPromise("Finish", async ({ assets }) => {
      for (const name of Object.keys(assets)) this.made.add(name.split("?")[0]);
      this.waiting -= 1;
      if (this.waiting > 0) return;
      const { finishBuild } = await tsImport("./src/cli/build/finish.ts", import.meta.url);
      console.log(finishBuild({ ...this.build, isWhole: this.parts === 3 }));
    });
  }
}

/** The licences of whatever is bundled go with it: most of them ask for that. */
const licencesOf = (part) =>
  new LicenseWebpackPlugin({
    outputFilename: `licences-${part}.txt`,
    perChunkOutput: false,
    // some packages bring no text: their licence is named then
    stats: { warnings: false, errors: true },
    // its package.json names none, its LICENSE file does
    licenseTypeOverrides: { "@univerjs/telemetry": "Apache-2.0" },
    unacceptableLicenseTest: (licence) =>
      !/^(MIT|ISC|Apache-2\.0|0BSD|BSD-[23]-Clause)$/.test(licence),
    handleUnacceptableLicense: (name, licence) => {
      throw new Error(`${name} has the licence ${licence}: may it be handed on?`);
    },
  });

/** What was compiled stays compiled, for the next build or one for another machine, until its makers change. */
const cacheOf = (part) => ({
  type: "filesystem",
  cacheDirectory: here(".cache/webpack"),
  name: part,
  buildDependencies: {
    makers: [here("webpack.config.js"), here("tsconfig.json"), here("src/cli/build/")],
  },
});

/** A third of the time of "ts-loader", which functions.js keeps: that is changed as it is compiled. */
const asTyped = (tsx) => ({
  loader: "swc-loader",
  options: {
    jsc: {
      target: "es2022",
      parser: { syntax: "typescript", tsx },
      transform: { react: { runtime: "automatic" }, useDefineForClassFields: false },
    },
  },
});

const common = (mode, part) => ({
  mode,
  name: part,
  cache: cacheOf(`${part}-${mode}`),
  // what a reader of a build wants to know, Finish says
  stats: mode === "production" ? "errors-warnings" : "normal",
  devtool: mode === "development" ? "source-map" : false,
  resolve: { extensions: [".ts", ".tsx", ".js"] },
  module: {
    rules: [
      { test: /\.ts$/, ...asTyped(false) },
      { test: /\.tsx$/, ...asTyped(true) },
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
  const { releaseManifest } = await tsImport(
    "./src/cli/build/release-manifest.ts",
    import.meta.url,
  );
  const { installFiles } = await tsImport("./src/cli/build/install/files.ts", import.meta.url);
  const manifest = releaseManifest(readFileSync(here("manifest.xml"), "utf8"), base, version);
  const filesOf = (from, to) =>
    readdirSync(here(from)).map((name) => [`${to}/${name}`, readFileSync(here(`${from}/${name}`))]);
  return {
    "functions.json": JSON.stringify(functionsJson(catalogue, base), null, 1),
    "manifest.xml": manifest,
    ...installFiles(manifest),
    ...Object.fromEntries(filesOf("src/taskpane/icons", "icons")),
    ...Object.fromEntries(filesOf("src/help/pictures", "help")),
    ...Object.fromEntries(
      Object.entries(helpSite(catalogue)).map(([name, page]) => [`help/${name}`, page]),
    ),
  };
}

/** For Google Sheets: made of functions.js as it is handed out, and of the licences of what is in it. */
async function googleSheets(assets) {
  const { googleSheetsFiles } = await tsImport(
    "./src/cli/build/google-sheets/script.ts",
    import.meta.url,
  );
  const made = (name) => assets[name].source().toString();
  return googleSheetsFiles(made("functions.js"), made("licences-functions.txt"), version);
}

/** Once functions.js is small, and its licences are written, which is done last of all. */
const afterLicences = PROCESS_ASSETS_STAGE_REPORT + 2;

/** functions.js only calculates: what does not, is left out of it as it is compiled. */
async function calculatingRules() {
  const { withoutHelp } = await tsImport("./src/cli/build/without-help.ts", import.meta.url);
  const { plainDecimals } = await tsImport("./src/cli/build/plain-decimals.ts", import.meta.url);
  // an instance of the compiler for each: the other bundles keep everything
  const compiled = (instance, transformer, compilerOptions = {}) => ({
    loader: "ts-loader",
    options: {
      transpileOnly: true,
      instance,
      compilerOptions,
      getCustomTransformers: () => ({ before: [transformer] }),
    },
  });
  return [
    { test: /\.ts$/, ...compiled("functions", withoutHelp) },
    { test: /[\\/]decimal\.mjs$/, ...compiled("decimals", plainDecimals, { allowJs: true }) },
  ];
}

/** The file the workbench opens with, from which its sample is saved. */
const sampleLogbook = "logbook.xlsx";

/** The sample logbook as HTML, every value computed, so that the page can be read at once. */
async function workbenchParts(policy) {
  const { plainLogbook } = await tsImport("./src/workbench/plain/build.ts", import.meta.url);
  return { policy, plain: await plainLogbook() };
}

/** What the renderer never uses here is not brought along; see the loader. */
const withoutUnused = { test: stoodInFor, loader: here("src/cli/build/stand-ins.js") };

/** The dictionaries it would load one by one stand in the same chunk, empty: nothing is fetched for them. */
const noExtraChunk = {
  test: /engine-render[\\/]lib[\\/]es[\\/]index\.js$/,
  parser: { dynamicImportMode: "eager" },
};

/** Faults of its own that are mended as it is bundled; see the loader. */
const mendedLibrary = {
  test: /@univerjs[\\/](core|engine-formula|engine-render|sheets-ui)[\\/]lib[\\/]es[\\/]index\.js$/,
  loader: here("src/cli/build/mended-library.js"),
};

/** A refusal is one sentence, not a stack of calls. */
function orStop(work) {
  try {
    return work();
  } catch (refusal) {
    console.error(refusal.message);
    return process.exit(1);
  }
}

/** `--env base=https://your.host/titrebook` builds for another machine, `--env out=folder` elsewhere. */
export default async (env = {}, { mode = "production" } = {}) => {
  const { baseFrom } = await tsImport("./src/cli/build/base.ts", import.meta.url);
  const { panePolicy, workbenchPolicy } = await tsImport(
    "./src/cli/build/policies.ts",
    import.meta.url,
  );
  const shared = common(mode, "workbench");
  const base = orStop(() => baseFrom(env.base));
  // No copy of an old file that a browser kept is taken for the new one.
  const kept = "?v=[contenthash:8]";
  const folder = resolve(env.out ?? here("dist"));
  const finish = mode === "production" ? [new Finish(folder, base)] : [];
  // esbuild is quicker than "@swc/core", but leaves the names of every icon that is not used: 30 kB of nulls
  const small = {
    minimizer: [new TerserPlugin({ minify: TerserPlugin.swcMinify, extractComments: false })],
  };
  return [
    {
      ...common(mode, "functions"),
      module: { rules: await calculatingRules() },
      optimization: small,
      entry: { functions: "./src/functions/register.ts" },
      output: { path: folder, filename: "[name].js" },
      plugins: [licencesOf("functions"), new ExtraFiles(googleSheets, afterLicences), ...finish],
    },
    {
      ...common(mode, "add-in"),
      optimization: small,
      entry: { taskpane: "./src/taskpane/start.tsx", "help/search": "./src/help/search/start.ts" },
      output: {
        path: folder,
        filename: "[name].js",
        chunkFilename: `taskpane.[name].js${kept}`,
      },
      plugins: [
        new ExtraFiles(() => addInFiles(base)),
        new HtmlWebpackPlugin({
          filename: "taskpane.html",
          template: "./src/taskpane/taskpane.html",
          chunks: ["taskpane"],
          templateParameters: {
            policy: panePolicy,
            functionsAddress: `functions.js?v=${version}`,
          },
          hash: true,
        }),
        licencesOf("add-in"),
        ...finish,
      ],
    },
    {
      ...shared,
      module: { rules: [...shared.module.rules, noExtraChunk, mendedLibrary, withoutUnused] },
      // The grid is one chunk: it is all needed, and at once.
      optimization: { ...shared.optimization, splitChunks: false },
      entry: { workbench: "./src/workbench/start.tsx" },
      output: {
        path: folder,
        filename: "[name].js",
        chunkFilename: `workbench.[name].js${kept}`,
      },
      plugins: [
        new HtmlWebpackPlugin({
          filename: "index.html",
          template: "./src/workbench/workbench.html",
          chunks: ["workbench"],
          templateParameters: () => workbenchParts(workbenchPolicy),
          hash: true,
        }),
        new ExtraFiles(() => ({
          [sampleLogbook]: readFileSync(here(`sample-workbooks/${sampleLogbook}`)),
        })),
        licencesOf("workbench"),
        ...finish,
      ],
    },
  ];
};
