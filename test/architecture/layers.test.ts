import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import ts from 'typescript';

const SRC = resolve(__dirname, '../../src');

/** What each layer may import from, besides itself. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  core: [],
  plan: ['core'],
  plots: ['core', 'plan'],
  functions: ['core', 'plan'],
  engine: ['core', 'plan', 'functions'],
  workbook: ['core', 'plan', 'plots', 'functions', 'engine'],
  pane: ['core', 'plan', 'plots', 'functions', 'engine', 'workbook'],
  'adapters/office': ['core', 'plan', 'plots', 'functions', 'engine', 'workbook'],
  'adapters/embedded': ['core', 'plan', 'functions', 'engine', 'workbook'],
  'adapters/solver': ['core', 'plan'],
  'adapters/xlsx': ['core', 'plan', 'plots', 'functions', 'engine', 'workbook'],
  generate: ['core', 'plan', 'functions', 'engine', 'workbook', 'adapters/xlsx', 'adapters/embedded'],
  entries: [
    'core',
    'plan',
    'plots',
    'functions',
    'engine',
    'workbook',
    'pane',
    'adapters/office',
    'adapters/embedded',
    'adapters/solver',
    'adapters/xlsx',
  ],
};
/** Packages that a pure layer may use. */
const PURE_PACKAGES = ['mathjs', 'highs'];
const PURE = ['core', 'plan', 'functions', 'engine', 'workbook'];

const layerOf = (file: string): string => {
  const [first = '', second = ''] = relative(SRC, file).split('/');
  return first === 'adapters' ? `adapters/${second}` : first;
};
const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => join(SRC, file));
const importsOf = (file: string): string[] =>
  ts.preProcessFile(readFileSync(file, 'utf8'), true, true).importedFiles.map(({ fileName }) => fileName);

/** Sentences like "core/x.ts imports pane/y.ts" for every arrow that points the wrong way. */
const violations = (all: readonly { file: string; imports: readonly string[] }[]): string[] =>
  all.flatMap(({ file, imports }) => {
    const layer = layerOf(file);
    const allowed = ALLOWED[layer];
    if (!allowed) return [`${relative(SRC, file)} is in no known layer`];
    return imports.flatMap((target) => {
      if (!target.startsWith('.')) {
        const isStyle = target.endsWith('.css');
        return PURE.includes(layer) &&
          !isStyle &&
          !PURE_PACKAGES.some((p) => target === p || target.startsWith(`${p}/`))
          ? [`${relative(SRC, file)} imports the package ${target}`]
          : [];
      }
      const path = resolve(dirname(file), target);
      if (!path.startsWith(SRC)) return [];
      const other = layerOf(path);
      return other === layer || allowed.includes(other)
        ? []
        : [`${relative(SRC, file)} imports ${relative(SRC, path)}`];
    });
  });

describe('layers', () => {
  it('import only what lies to their left', () => {
    expect(files.length).toBeGreaterThan(20);
    expect(violations(files.map((file) => ({ file, imports: importsOf(file) })))).toEqual([]);
  });

  it('would be caught pointing right, sideways or at a host package', () => {
    const planted = [
      { file: join(SRC, 'core/a.ts'), imports: ['../plan/model'] },
      { file: join(SRC, 'adapters/office/a.ts'), imports: ['../embedded/b'] },
      { file: join(SRC, 'plan/a.ts'), imports: ['node:fs'] },
      { file: join(SRC, 'else/a.ts'), imports: [] },
    ];
    expect(violations(planted)).toHaveLength(4);
  });
});
