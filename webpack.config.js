const { existsSync, readdirSync, readFileSync } = require('node:fs');
const path = require('node:path');
const HtmlWebpackPlugin = require('html-webpack-plugin');
const MiniCssExtractPlugin = require('mini-css-extract-plugin');
const TerserPlugin = require('terser-webpack-plugin');
const { DefinePlugin, IgnorePlugin } = require('webpack');

const entry = (name) => path.resolve(__dirname, `src/entries/${name}`);
const production = process.env.NODE_ENV !== 'development';

const bundles = {
  functions: './src/entries/functions.ts',
  taskpane: './src/entries/taskpane.ts',
  workbench: './src/entries/workbench.ts',
  // A worker, loaded only when somebody assigns sensors; no page names it.
  solver: './src/adapters/solver/worker.ts',
};

/** Copies files as they are; each pair is [from the project's root, name in dist]. Missing ones are left out. */
class CopyFiles {
  constructor(pairs) {
    this.pairs = pairs;
  }
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    compiler.hooks.thisCompilation.tap('CopyFiles', (compilation) => {
      compilation.hooks.processAssets.tapPromise('CopyFiles', async () => {
        const { readFile } = require('node:fs/promises');
        for (const [from, to] of this.pairs) {
          const file = path.resolve(__dirname, from);
          if (!existsSync(file)) continue;
          compilation.fileDependencies.add(file);
          compilation.emitAsset(to, new RawSource(await readFile(file)));
        }
      });
    });
  }
}

/** Names the packages whose code is in the bundles, each with its licence, as most of them ask for. */
class Licences {
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    compiler.hooks.thisCompilation.tap('Licences', (compilation) => {
      const stage = compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tap({ name: 'Licences', stage }, () => {
        const folders = new Set();
        for (const module of compilation.modules) {
          const [folder] =
            /^.*[\\/]node_modules[\\/](@[^\\/]+[\\/])?[^\\/]+/.exec(module.nameForCondition() ?? '') ?? [];
          if (folder) folders.add(folder);
        }
        const parts = [...folders].map((folder) => {
          const { name, version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
          const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
          const text = file ? readFileSync(path.join(folder, file), 'utf8').trim() : `Licence: ${license}`;
          return `${name} ${version} (${license ?? 'see below'})\n\n${text.replaceAll('\r', '')}\n`;
        });
        compilation.emitAsset('third-party.txt', new RawSource(parts.sort().join(`\n${'-'.repeat(80)}\n\n`)));
      });
    });
  }
}

/** Writes what is made from the catalogue: the metadata that Excel reads before it loads the functions, and the help pages. */
class FromCatalogue {
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    compiler.hooks.thisCompilation.tap('FromCatalogue', (compilation) => {
      compilation.hooks.processAssets.tapPromise('FromCatalogue', async () => {
        const { loadGenerators } = await import('./src/generate/load.mjs');
        const { functionsJson, staticPages } = await loadGenerators();
        const made = { ...(await functionsJson()), ...(await staticPages()) };
        for (const [name, text] of Object.entries(made)) compilation.emitAsset(name, new RawSource(text));
      });
    });
  }
}

module.exports = {
  mode: production ? 'production' : 'development',
  context: __dirname,
  entry: Object.fromEntries(Object.entries(bundles).filter(([, file]) => existsSync(path.resolve(__dirname, file)))),
  output: {
    path: path.resolve(__dirname, 'dist'),
    filename: '[name].js',
    chunkFilename: '[name].js',
    clean: true,
  },
  devtool: false,
  cache: {
    type: 'filesystem',
    cacheDirectory: path.resolve(__dirname, '.cache/webpack'),
    buildDependencies: { config: [__filename] },
  },
  resolve: { extensions: ['.ts', '.js'] },
  module: {
    rules: [
      // Types are checked by `npm run typecheck`.
      { test: /\.ts$/, loader: 'ts-loader', options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
      // The solver's, beside solver.js.
      { test: /\.wasm$/, type: 'asset/resource', generator: { filename: '[name][ext]' } },
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, 'css-loader'] },
    ],
  },
  plugins: [
    new DefinePlugin({ CHANNELWRIGHT_BUILT: JSON.stringify(process.env.CHANNELWRIGHT_MARK ?? 'no mark') }),
    new MiniCssExtractPlugin({ filename: '[name].css', ignoreOrder: true }),
    new HtmlWebpackPlugin({
      template: entry('workbench.html'),
      filename: 'workbench.html',
      chunks: ['workbench'],
      minify: false,
    }),
    new HtmlWebpackPlugin({
      template: entry('taskpane.html'),
      filename: 'taskpane.html',
      chunks: ['functions', 'taskpane'],
      chunksSortMode: 'manual',
      scriptLoading: 'defer',
      minify: false,
    }),
    new FromCatalogue(),
    new Licences(),
    new CopyFiles([
      ['manifest.xml', 'manifest.xml'],
      ['LICENSE', 'LICENSE.txt'],
      ...[16, 32, 64, 80].map((size) => [`assets/icons/icon-${size}.png`, `assets/icons/icon-${size}.png`]),
      ['assets/demo-plan.xlsx', 'demo-plan.xlsx'],
      ['assets/examples.xlsx', 'examples.xlsx'],
      ['src/entries/pages.css', 'pages.css'],
      ['assets/icons/icon.svg', 'icon.svg'],
    ]),
    // The solver can also run in Node; in a worker it never asks for these.
    new IgnorePlugin({ resourceRegExp: /^node:/, contextRegExp: /highs/ }),
    // The grid brings hyphenation for 70 languages as separate files; only English is ever asked for.
    new IgnorePlugin({
      resourceRegExp: /^\.\/(?!en-)[a-z0-9-]+-[\w-]{8}\.js$/,
      contextRegExp: /@univerjs[\\/]engine-render/,
    }),
  ],
  optimization: {
    minimizer: [
      new TerserPlugin({
        minify: TerserPlugin.esbuildMinify,
        terserOptions: { target: 'es2022' },
        extractComments: false,
      }),
    ],
  },
  performance: { hints: false },
  stats: 'errors-warnings',
};
