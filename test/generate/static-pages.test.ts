import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { SaxesParser } from 'saxes';
import { LANGUAGES } from '../../src/core/language';
import { FUNCTIONS, NAMESPACE } from '../../src/functions/index';
import { staticPages } from '../../src/generate/static-pages';
import { DEFAULT_LIMITS } from '../../src/plan/limits';

const assets = join(__dirname, '../../assets');
/** What the build puts beside these pages. */
const BESIDE: Readonly<Record<string, string>> = {
  'workbench.html': '../src/entries/workbench.html',
  'pages.css': '../src/entries/pages.css',
  'manifest.xml': '../manifest.xml',
  'examples.xlsx': 'examples.xlsx',
  'icon.svg': 'icons/icon.svg',
};

let pages: Readonly<Record<string, string>>;
beforeAll(async () => {
  pages = await staticPages();
});

interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}
/** The tags of a page, read strictly: an element that is not closed is an error. */
const tagsOf = (page: string): Tag[] => {
  const tags: Tag[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => tags.push({ name, attributes: attributes as Tag['attributes'] }));
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(page.replace('<!doctype html>', '')).close();
  return tags;
};
const named = (tags: readonly Tag[], name: string) => tags.filter((tag) => tag.name === name);

describe('the pages for help and installing', () => {
  it('are there in every language, and say which', () => {
    expect(Object.keys(pages).sort()).toEqual([
      'help.de.html',
      'help.fr.html',
      'help.html',
      'install.de.html',
      'install.fr.html',
      'install.html',
    ]);
    for (const [name, page] of Object.entries(pages)) {
      const language = LANGUAGES.find((l) => name.includes(`.${l}.`)) ?? 'en';
      expect(named(tagsOf(page), 'html')[0]?.attributes['lang']).toBe(language);
    }
  });

  it('need no script and may load nothing but their style sheet and pictures', () => {
    for (const page of Object.values(pages)) {
      const tags = tagsOf(page);
      expect(named(tags, 'script')).toEqual([]);
      expect(
        tags.flatMap(({ attributes }) => Object.keys(attributes)).filter((name) => /^on|^style$/.test(name)),
      ).toEqual([]);
      const policy = named(tags, 'meta').find(({ attributes }) => attributes['http-equiv'])?.attributes['content'];
      expect(policy).toBe("default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'");
    }
  });

  it('lead to nothing that is missing, and to no other place', () => {
    for (const [name, page] of Object.entries(pages)) {
      const tags = tagsOf(page);
      const ids = new Set(tags.map(({ attributes }) => attributes['id']));
      const targets = tags.flatMap(({ attributes }) => attributes['href'] ?? attributes['src'] ?? []);
      expect(targets.length).toBeGreaterThan(3);
      for (const target of targets) {
        const found = target.startsWith('#')
          ? ids.has(target.slice(1))
          : target in pages || existsSync(join(assets, BESIDE[target] ?? 'no such file'));
        expect([name, target, found]).toEqual([name, target, true]);
      }
    }
  });

  it('say the same in every language: as many headings, steps, rows and things to type', () => {
    for (const kind of ['help', 'install']) {
      const shapes = LANGUAGES.map((language) => {
        const page = pages[language === 'en' ? `${kind}.html` : `${kind}.${language}.html`]!;
        const tags = tagsOf(page);
        return ['h2', 'h3', 'li', 'tr', 'td', 'details', 'code', 'a'].map((name) => [name, named(tags, name).length]);
      });
      expect(shapes[1]).toEqual(shapes[0]);
      expect(shapes[2]).toEqual(shapes[0]);
    }
  });
});

describe('the help page', () => {
  it('holds every function with its arguments, where a link by name finds it', () => {
    for (const page of [pages['help.html']!, pages['help.de.html']!, pages['help.fr.html']!]) {
      const ids = new Set(tagsOf(page).map(({ attributes }) => attributes['id']));
      for (const fn of FUNCTIONS) {
        expect(ids).toContain(fn.name);
        expect(page).toContain(`<code>${NAMESPACE}.${fn.name}(`);
        for (const name of Object.keys(fn.args)) expect(page).toContain(`<dt><code>${name}</code></dt>`);
      }
    }
  });

  it('states the limits that are in force', () => {
    const { signalToNoise, headroom, massRatio } = DEFAULT_LIMITS;
    expect(pages['help.html']).toContain(`≥ ${signalToNoise.pass} dB`);
    expect(pages['help.html']).toContain(`≥ ${headroom.pass} dB`);
    expect(pages['help.de.html']).toContain(`≥ ${String(headroom.pass).replace('.', ',')} dB`);
    expect(pages['help.fr.html']).toContain(`≤ ${String(massRatio.modal.pass).replace('.', ',')}`);
  });

  it('speaks of functions in its reader’s language', () => {
    const summary = FUNCTIONS.find(({ name }) => name === 'MASS.RATIO')!.summary;
    expect(pages['help.html']).toContain(summary);
    expect(pages['help.de.html']).not.toContain(summary);
    expect(pages['help.fr.html']).not.toContain(summary);
  });

  it('promises no safety', () => {
    for (const page of Object.values(pages)) expect(page).not.toMatch(/\b(is|are) safe\b|\bsicher ist\b|en sécurité/);
  });
});
