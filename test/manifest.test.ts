import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { LANGUAGES, languageOf } from '../src/core/language';
import { NAMESPACE } from '../src/functions/index';
import { functionsJson, functionsJsonName } from '../src/generate/functions-json';
import { manifestProblems } from '../src/generate/manifest-check';
import { addressesIn, manifestVersion } from '../src/generate/package-manifest';
import { staticPages } from '../src/generate/static-pages';

const root = join(__dirname, '..');
const manifest = readFileSync(join(root, 'manifest.xml'), 'utf8');

/** Reads the size out of the PNG header (ISO/IEC 15948: IHDR comes first). */
const pngSize = (path: string) => {
  const file = join(root, path);
  if (!existsSync(file)) return undefined;
  const bytes = readFileSync(file);
  if (bytes.toString('latin1', 1, 4) !== 'PNG') return undefined;
  return { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) };
};
const problems = (xml: string) => manifestProblems(xml, { pngSize });

const change = (from: string | RegExp, to: string): string => {
  const changed = manifest.replace(from, to);
  if (changed === manifest) throw new Error(`nothing to change: ${from}`);
  return changed;
};

describe('the add-in manifest', () => {
  it('breaks no published rule', () => {
    expect(problems(manifest)).toEqual([]);
  });

  it('names the namespace of the catalogue', () => {
    expect(manifest).toContain(`<bt:String id="Functions.Namespace" DefaultValue="${NAMESPACE}"/>`);
  });

  it('asks in each language for files that the build makes', async () => {
    const made = [...Object.keys(await functionsJson()), ...Object.keys(await staticPages())];
    const asked = addressesIn(manifest)
      .map((url) => new URL(url).pathname.slice(1))
      .filter((path) => /^(functions.*\.json|help.*|install.*)$/.test(path));
    expect(asked.length).toBeGreaterThan(LANGUAGES.length);
    expect(asked.filter((path) => !made.includes(path))).toEqual([]);
  });

  it('shows Excel the metadata in the language of its locale', () => {
    const metadata = /<bt:Url id="Functions\.Metadata\.Url"[^]*?<\/bt:Url>/.exec(manifest)?.[0] ?? '';
    const overrides = [...metadata.matchAll(/Locale="([^"]+)" Value="([^"]+)"/g)];
    expect(new Set(overrides.map(([, locale]) => languageOf(locale)))).toEqual(
      new Set(LANGUAGES.filter((language) => language !== 'en')),
    );
    for (const [, locale, url] of overrides)
      expect(url).toMatch(new RegExp(`/${functionsJsonName(languageOf(locale))}$`));
  });

  it('rises with the version of the program', () => {
    const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
    expect(manifest).toContain(`<Version>${manifestVersion(version)}</Version>`);
    expect(manifestVersion('0.1.0')).toBe('1.1.0.0');
    expect(manifestVersion('1.0.12')).toBe('2.0.12.0');
    expect(() => manifestVersion('1.0')).toThrow('three numbers');
  });
});

describe('the manifest checker', () => {
  const support = /  <SupportUrl [^]*<\/SupportUrl>\n/.exec(manifest)?.[0] ?? '';
  it.each<[string, string, RegExp]>([
    ['broken XML', change('</OfficeApp>', ''), /not well-formed/],
    ['an Id that is no GUID', change(/<Id>.*<\/Id>/, '<Id>channelwright</Id>'), /GUID/],
    ['a version with five groups', change('>1.1.0.0<', '>1.1.0.0.0<'), /Version/],
    ['a version below 1.0', change('>1.1.0.0<', '>0.9.0.0<'), /Version/],
    [
      'a name that is too long',
      change('DefaultValue="Channelwright"/>', `DefaultValue="${'C'.repeat(126)}"/>`),
      /DisplayName/,
    ],
    [
      'a description that is too long',
      change(/(<Description DefaultValue=")/, `$1${'long '.repeat(30)}`),
      /Description must/,
    ],
    ['no provider', change(/<ProviderName>.*<\/ProviderName>/, '<ProviderName></ProviderName>'), /ProviderName/],
    ['a locale without country', change('>en-US<', '>english<'), /DefaultLocale/],
    [
      'a plain http page',
      change('"https://localhost:3000/functions.js"', '"http://localhost:3000/functions.js"'),
      /https/,
    ],
    ['a plain http domain', change('<AppDomain>https:', '<AppDomain>http:'), /https/],
    ['elements out of order', change(support, '').replace('  <IconUrl', `${support}  <IconUrl`), /out of order/],
    ['a missing element', change(support, ''), /SupportUrl is missing/],
    ['an element given twice', change(support, support + support), /given twice/],
    ['an unknown element', change('<Permissions>', '<Colour/><Permissions>'), /may not hold Colour/],
    [
      'form factors before runtimes',
      change(/(\s*<Runtimes>[^]*<\/Runtimes>)(\s*<AllFormFactors>[^]*<\/AllFormFactors>)/, '$2$1'),
      /out of order/,
    ],
    [
      'a page after its metadata',
      change(/(\s*<Page>[^]*<\/Page>)(\s*<Metadata>[^]*<\/Metadata>)/, '$2$1'),
      /out of order/,
    ],
    [
      'a second pane',
      change(
        '<SourceLocation resid="Taskpane.Url"/>\n                  </Action>',
        '<TaskpaneId>Two</TaskpaneId><SourceLocation resid="Taskpane.Url"/></Action>',
      ),
      /TaskpaneId/,
    ],
    [
      'a dangling reference',
      change('<Label resid="Group.Label"/>', '<Label resid="Group.Lable"/>'),
      /Group\.Lable is not defined/,
    ],
    [
      'a reference into the wrong list',
      change('<Title resid="Open.Label"/>', '<Title resid="Open.Text"/>'),
      /not defined in ShortStrings/,
    ],
    [
      'an unused resource',
      change('<bt:ShortStrings>', '<bt:ShortStrings><bt:String id="Spare" DefaultValue="Spare"/>'),
      /never used/,
    ],
    [
      'a resource defined twice',
      change('<bt:ShortStrings>', '<bt:ShortStrings><bt:String id="Open.Label" DefaultValue="x"/>'),
      /defined twice/,
    ],
    [
      'a reference that is too long',
      change(/Functions\.Metadata\.Url/g, 'Functions.Metadata.Address.Of.The.Json'),
      /1 to 32/,
    ],
    [
      'a short string that is too long',
      change('DefaultValue="Plan channels"', `DefaultValue="${'Plan '.repeat(26)}"`),
      /1 to 125/,
    ],
    [
      'a long string that is too long',
      change('DefaultValue="Opens', `DefaultValue="${'Opens '.repeat(30)}`),
      /1 to 250/,
    ],
    ['a runtime that dies with the pane', change('lifetime="long"', 'lifetime="short"'), /long-lived/],
    [
      'functions in a runtime of their own',
      change(/(<Page>\s*<SourceLocation resid=")Taskpane\.Url/, '$1Start.Url'),
      /Page is not the page/,
    ],
    [
      'commands in a runtime of their own',
      change('<FunctionFile resid="Taskpane.Url"/>', '<FunctionFile resid="Start.Url"/>'),
      /FunctionFile is not/,
    ],
    [
      'a button that opens another page',
      change(/(<Action xsi:type="ShowTaskpane">\s*<SourceLocation resid=")Taskpane\.Url/, '$1Start.Url'),
      /Action is not/,
    ],
    [
      'a default page outside the shared runtime',
      change(/(<DefaultSettings>\s*<SourceLocation DefaultValue=")[^"]*/, '$1https://localhost:3000/other.html'),
      /default page/,
    ],
    ['no small icon', change('<bt:Image size="16" resid="Icon.16"/>', ''), /size 16 is missing/],
    ['no large icon', change('<bt:Image size="80" resid="Icon.80"/>', ''), /size 80 is missing/],
    [
      'an icon of the wrong size',
      change('<bt:Image size="16" resid="Icon.16"/>', '<bt:Image size="16" resid="Icon.32"/>'),
      /is 32 × 32, expected 16 × 16/,
    ],
    ['an icon that is not there', change('icons/icon-80.png', 'icons/icon-08.png'), /no picture/],
    [
      'a newer requirement than the oldest host has',
      change('Name="ExcelApi" MinVersion="1.9"', 'Name="ExcelApi" MinVersion="1.13"'),
      /requirement ExcelApi/,
    ],
    [
      'no shared runtime requirement',
      change('<Set Name="SharedRuntime" MinVersion="1.1"/>', ''),
      /requirement SharedRuntime/,
    ],
    ['read-only permission', change('ReadWriteDocument', 'ReadDocument'), /Permissions/],
    [
      'a translation that is too long',
      change('Value="Kanäle planen"', `Value="${'Kanäle '.repeat(20)}"`),
      /Open\.Label must have 1 to 125/,
    ],
    [
      'a translated description that is too long',
      change('Value="Plant Kanäle', `Value="${'Plant '.repeat(50)}`),
      /Description must/,
    ],
    ['a translation without text', change('Value="Kanäle planen"', 'Value=""'), /Open\.Label must have 1 to 125/],
    [
      'a plain http address for one language',
      change('Value="https://localhost:3000/functions.de.json"', 'Value="http://localhost:3000/functions.de.json"'),
      /not an https address/,
    ],
    ['a language without country', change('Locale="de-DE" Value="Kanäle', 'Locale="de" Value="Kanäle'), /"de" is not/],
    [
      'a translation into the default language',
      change('Locale="de-DE" Value="Kanäle', 'Locale="en-US" Value="Kanäle'),
      /en-US is the default/,
    ],
    [
      'two translations into one language',
      change('Locale="de-DE" Value="Kanäle', 'Locale="fr-FR" Value="Kanäle'),
      /given twice in one language/,
    ],
    [
      'a text that is missing in one language',
      change('<bt:Override Locale="de-DE" Value="Kanäle planen"/>', ''),
      /Open\.Label is not given in de-DE/,
    ],
    [
      'a namespace that changes with the language',
      change('DefaultValue="CHAN"/>', 'DefaultValue="CHAN"><bt:Override Locale="de-DE" Value="KANAL"/></bt:String>'),
      /Functions\.Namespace must be the same/,
    ],
    [
      'a page that changes with the language',
      change(
        'id="Taskpane.Url" DefaultValue="https://localhost:3000/taskpane.html"/>',
        'id="Taskpane.Url" DefaultValue="https://localhost:3000/taskpane.html"><bt:Override Locale="de-DE" Value="https://localhost:3000/de.html"/></bt:Url>',
      ),
      /Taskpane\.Url must be the same/,
    ],
    [
      'something else inside a translated text',
      change('<bt:Override Locale="de-DE" Value="Kanäle', '<bt:Colour/><bt:Override Locale="de-DE" Value="Kanäle'),
      /String may not hold Colour/,
    ],
    ['a namespace with a hyphen', change('DefaultValue="CHAN"', 'DefaultValue="CHAN-1"'), /namespace/],
    ['two controls of one id', change('id="Channelwright.Open"', 'id="Channelwright.Group"'), /not unique/],
  ])('finds %s', (_fault, xml, expected) => {
    expect(problems(xml).join('\n')).toMatch(expected);
  });
});
