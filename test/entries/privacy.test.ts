import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { staticPages } from '../../src/generate/static-pages';

const SRC = join(__dirname, '../../src');
/** The makers of Excel, whose hosts Office.js talks to; the page cannot work in Excel without them. */
const MICROSOFT =
  /^https:\/\/(\*\.)?(microsoft\.com|office\.com|office\.net|officeapps\.live\.com|appsforoffice\.microsoft\.com|ajax\.aspnetcdn\.com)$/;
const OWN = ["'self'", "'none'", "'unsafe-inline'", "'wasm-unsafe-eval'", 'data:', 'blob:'];
/** Ways by which a page can send something, each with what it falls back to. */
const SENDS = ['connect-src', 'img-src', 'frame-src', 'script-src', 'style-src', 'font-src', 'worker-src', 'media-src'];

const policyOf = (page: string): Map<string, string[]> => {
  const content = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(page)?.[1] ?? '';
  const rules = content.split(';').map((rule) => rule.trim().split(/\s+/));
  return new Map(rules.map(([name = '', ...sources]) => [name, sources]));
};
/** Places other than its own that a page may reach in any way. */
const foreign = (page: string): string[] => {
  const policy = policyOf(page);
  const allowed = SENDS.flatMap((way) => policy.get(way) ?? policy.get('default-src') ?? ['*']);
  return [...new Set(allowed)].filter((source) => !OWN.includes(source));
};

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => join(SRC, file));

/** Names that reach a network, wherever they are used as values. */
const NETWORK = new Set([
  'fetch',
  'XMLHttpRequest',
  'WebSocket',
  'EventSource',
  'sendBeacon',
  'RTCPeerConnection',
  'WebTransport',
  'importScripts',
]);
const requests = (name: string, text: string): string[] => {
  if (![...NETWORK].some((word) => text.includes(word))) return [];
  const source = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && NETWORK.has(node.text)) found.push(node.parent.getText(source));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

describe('nothing leaves the machine', () => {
  it('the workbench, the help and the page on installing may reach their own place only', async () => {
    const pages = [readFileSync(join(SRC, 'entries/workbench.html'), 'utf8'), ...Object.values(await staticPages())];
    for (const page of pages) expect(foreign(page)).toEqual([]);
  });

  it('the pane in Excel may reach Microsoft, whose Office.js it must load, and nobody else', () => {
    const page = readFileSync(join(SRC, 'entries/taskpane.html'), 'utf8');
    expect(foreign(page).length).toBeGreaterThan(0);
    expect(foreign(page).filter((source) => !MICROSOFT.test(source))).toEqual([]);
  });

  it('every page forbids forms, plug-ins and another base', async () => {
    const own = ['workbench', 'taskpane'].map((name) => readFileSync(join(SRC, `entries/${name}.html`), 'utf8'));
    for (const page of [...own, ...Object.values(await staticPages())]) {
      const policy = policyOf(page);
      expect([policy.get('form-action'), policy.get('base-uri')]).toEqual([["'none'"], ["'none'"]]);
      expect(policy.get('object-src') ?? policy.get('default-src')).toEqual(["'none'"]);
    }
  });

  it('no source asks a network for anything but two files beside the page', () => {
    const found = files.flatMap((file) => requests(file, readFileSync(file, 'utf8')));
    expect(found.sort()).toEqual(["fetch('functions.json', { cache: 'no-cache' })", 'fetch(DEMO.file)']);
    expect(readFileSync(join(SRC, 'entries/workbench.ts'), 'utf8')).toMatch(/DEMO = \{[^}]*file: '[\w-]+\.xlsx'/);
  });

  it('a request and a policy with a hole would be found', () => {
    expect(requests('a.ts', 'void navigator.sendBeacon("https://a.example", x); new WebSocket(y);')).toHaveLength(2);
    const page = (policy: string) => `<meta http-equiv="Content-Security-Policy" content="${policy}" />`;
    expect(foreign(page("default-src 'self'; connect-src *"))).toEqual(['*']);
    expect(foreign(page("script-src 'self'"))).toEqual(['*']);
    expect(foreign(page("default-src 'self'; img-src https://a.example"))).toEqual(['https://a.example']);
    expect(foreign('<p>no policy</p>')).toEqual(['*']);
  });
});
