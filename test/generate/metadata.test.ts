import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { generateCustomFunctionsMetadata } from 'custom-functions-metadata';
import { defineFunction, type AnyFunction } from '../../src/functions/define';
import { FUNCTIONS, NAMESPACE } from '../../src/functions/index';
import { brokenPromises, grown, type Frozen } from '../../src/generate/frozen';
import { LANGUAGES } from '../../src/core/language';
import { loadWording } from '../../src/functions/words/load';
import { functionsJson, functionsJsonName } from '../../src/generate/functions-json';
import { customFunctionsMetadata, type CustomFunctionsMetadata } from '../../src/generate/metadata';
import { jsdocStubs } from './jsdoc-stubs';

/** One function with every kind of argument, so that the comparison does not depend on what the catalogue happens to use. */
const everyKind: AnyFunction = defineFunction({
  name: 'EVERY.KIND',
  family: 'trust',
  summary: 'Every kind of argument: "quoted", µg/√Hz, a ≤ b.',
  equation: 'none',
  args: {
    curve: { kind: 'curve', x: 'Hz', y: '%', text: 'A curve.', optional: true },
    amount: { unit: 'g', text: 'An amount.', above: 0, atMost: 5 },
    maybe: { unit: 'K', text: 'A forgiving amount.', forgiving: true },
    choice: { kind: 'choice', choices: ['left', 'right'], default: 'left', text: 'A side.' },
    word: { kind: 'text', text: 'A text.', optional: true },
    one: { kind: 'cell', text: 'Any cell.', optional: true },
    rest: { kind: 'block', repeating: true, optional: true, text: 'Any cells.' },
  },
  result: { kind: 'block', text: 'Cells.' },
  validity: 'none',
  source: { kind: 'practice', note: 'common practice, no source' },
  compute: () => 'done',
  examples: [],
});

const microsoftMetadata = async (functions: readonly AnyFunction[]) => {
  const folder = mkdtempSync(join(tmpdir(), 'channelwright-stubs-'));
  try {
    const file = join(folder, 'functions.ts');
    writeFileSync(file, jsdocStubs(functions));
    const { metadataJson, errors } = await generateCustomFunctionsMetadata(file);
    expect(errors).toEqual([]);
    return JSON.parse(metadataJson) as unknown;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

describe('functions.json', () => {
  it.each<[string, readonly AnyFunction[]]>([
    ['the catalogue', FUNCTIONS],
    ['every kind of argument', [everyKind]],
  ])("equals what Microsoft's generator makes of %s, plus the switch that lets errors in", async (_of, functions) => {
    // The generator cannot set allowErrorForDataTypeAny; the documentation leaves it to metadata that is made otherwise.
    expect(customFunctionsMetadata(functions)).toEqual({
      ...((await microsoftMetadata(functions)) as object),
      allowErrorForDataTypeAny: true,
    });
  });

  it('marks an argument optional only where no needed one follows', () => {
    const [every] = customFunctionsMetadata([everyKind]).functions;
    expect(every?.parameters.map(({ optional }) => optional ?? false)).toEqual([
      false,
      false,
      true,
      true,
      true,
      true,
      true,
    ]);
  });

  it.each(LANGUAGES)(
    'describes every function and argument in %s on one line that a tool tip can hold',
    async (language) => {
      const metadata = customFunctionsMetadata(FUNCTIONS, await loadWording(language));
      const texts = metadata.functions.flatMap(({ description, parameters }) => [
        description,
        ...parameters.map((p) => p.description),
      ]);
      for (const text of texts) {
        expect(text).toMatch(/^[^\n@]+$/);
        expect(text).not.toContain('*/');
      }
      expect(texts.filter((text) => text.length > 255)).toEqual([]);
    },
  );

  it('differs between languages in nothing but descriptions and the page of help', async () => {
    const files = await functionsJson();
    expect(Object.keys(files).sort()).toEqual(LANGUAGES.map(functionsJsonName).sort());
    const parsed = LANGUAGES.map(
      (language) => JSON.parse(files[functionsJsonName(language)]!) as CustomFunctionsMetadata,
    );
    const [english, ...others] = parsed.map((metadata) => ({
      ...metadata,
      functions: metadata.functions.map((fn) => ({
        ...fn,
        description: '',
        helpUrl: fn.helpUrl.replace(/help(\.\w\w)?\.html/, 'help.html'),
        parameters: fn.parameters.map((parameter) => ({ ...parameter, description: '' })),
      })),
    }));
    for (const other of others) expect(other).toEqual(english);
    const first = parsed.map(({ functions }) => functions.map(({ description }) => description));
    for (const other of first.slice(1)) other.forEach((text, i) => expect(text).not.toBe(first[0]![i]));
  });
});

describe('a worksheet function name', () => {
  const names = FUNCTIONS.map((fn) => fn.name);

  it('is unique, upper case, words by dots, and short enough for Excel', () => {
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[A-Z]+(\.[A-Z]+)*$/);
    // Custom function names have 3 to 128 characters, the namespace included.
    for (const name of names) expect(`${NAMESPACE}.${name}`.length).toBeLessThanOrEqual(128);
  });

  it('differs from every other even when dots are stored as underscores', () => {
    expect(new Set(names.map((name) => name.replaceAll('.', '_'))).size).toBe(names.length);
  });

  it('never reads as a cell address, in either notation', () => {
    const columns = 16384; // Excel specifications and limits: columns A to XFD
    const columnOf = (letters: string) => [...letters].reduce((n, c) => n * 26 + c.charCodeAt(0) - 64, 0);
    for (const part of names.flatMap((name) => [name, ...name.split('.')])) {
      const [, letters, digits] = /^([A-Z]{1,3})(\d+)$/.exec(part) ?? [];
      if (letters) expect(columnOf(letters) > columns || Number(digits) > 1048576).toBe(true);
      expect(part).not.toMatch(/^R\d*(C\d*)?$|^C\d*$/);
    }
  });

  it('is no command of the old macro language', () => {
    // From memory of the Excel 4 macro function reference; only the one-word names, which could clash.
    const macro =
      'ABSREF ACTIVATE ALERT ARGUMENT BEEP BREAK CALCULATE CALL CALLER CLEAR CLOSE COMBINATION COPY CUT DEREF DIALOG ECHO ' +
      'ELSE ERROR EVALUATE EXEC EXECUTE FCLOSE FILES FOPEN FOR FORMULA FPOS FREAD FSIZE FWRITE GOTO GROUP HALT HELP HIDE ' +
      'INITIATE INPUT INSERT JUSTIFY LINKS MERGE MESSAGE MOVE NAMES NEXT NOTE OPEN PARSE PASTE PATTERNS POKE PRECISION ' +
      'PRINT PROTECT QUIT REFTEXT REGISTER RELREF REQUEST RESTART RESULT RETURN RUN SAVE SCALE SELECT SELECTION SERIES ' +
      'SIZE SORT SPLIT STEP STYLE TABLE TERMINATE TEXTREF UNDO UNGROUP UNHIDE UNREGISTER VIEW VOLATILE WAIT WHILE WINDOWS ZOOM';
    expect(names.filter((name) => macro.split(' ').includes(name))).toEqual([]);
  });
});

describe('the released ids', () => {
  const frozen = JSON.parse(readFileSync(join(__dirname, 'frozen-ids.json'), 'utf8')) as Frozen;

  it('are all still in the catalogue, with their arguments in place', () => {
    expect(brokenPromises(frozen, FUNCTIONS)).toEqual([]);
  });

  it('list the whole catalogue', () => {
    expect(FUNCTIONS.map((fn) => fn.name).filter((name) => !(name in frozen))).toEqual([]);
  });

  it('reveal a function that is gone and an argument that moved', () => {
    const released: Frozen = { 'EVERY.KIND': ['amount', 'curve'], 'OLD.ONE': ['a'] };
    expect(brokenPromises(released, [everyKind])).toEqual([
      'EVERY.KIND: argument amount is no longer in its place',
      'OLD.ONE is gone',
    ]);
  });

  it('accept a new argument at the end and never lose an entry', () => {
    const released: Frozen = { 'EVERY.KIND': ['curve', 'amount'] };
    expect(brokenPromises(released, [everyKind])).toEqual([]);
    expect(grown({ ...released, 'OLD.ONE': ['a'] }, [everyKind])).toEqual({
      'EVERY.KIND': Object.keys(everyKind.args),
      'OLD.ONE': ['a'],
    });
  });
});
