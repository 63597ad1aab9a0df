// Jest transform: TypeScript to CommonJS without type checking (tsc does that in `npm run check`).
const { createHash } = require('node:crypto');
const ts = require('typescript');

const compilerOptions = {
  module: ts.ModuleKind.CommonJS,
  target: ts.ScriptTarget.ES2022,
  esModuleInterop: true,
  sourceMap: true,
  inlineSources: true,
};

module.exports = {
  process(source, fileName) {
    const { outputText, sourceMapText } = ts.transpileModule(source, { compilerOptions, fileName });
    return { code: outputText, map: JSON.parse(sourceMapText) };
  },
  getCacheKey(source, fileName, options) {
    return createHash('sha1')
      .update(source)
      .update(fileName)
      .update(ts.version)
      .update(String(options.instrument))
      .update(options.configString)
      .digest('hex');
  },
};
