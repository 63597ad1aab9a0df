import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import type { IncomingHttpHeaders } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { generateCertificates } from 'office-addin-dev-certs';
import { addressesIn } from '../../src/generate/package-manifest';

// What `npm run excel` starts, without the step that puts the add-in into Excel.

const root = join(__dirname, '../..');
const manifest = readFileSync(join(root, 'manifest.xml'), 'utf8');
const folder = mkdtempSync(join(tmpdir(), 'channelwright-excel-'));
const certificate = (name: string) => join(folder, name);

let server: ChildProcess;
let port = 0;
beforeAll(async () => {
  // Microsoft's tool makes the certificates; trusting them would need rights on this machine.
  await generateCertificates(certificate('ca.crt'), certificate('localhost.crt'), certificate('localhost.key'));
  const script = join(folder, 'serve.mjs');
  writeFileSync(
    script,
    `import { readFileSync } from 'node:fs';
     import { serveExcel } from ${JSON.stringify(join(root, 'src/entries/serve.mjs'))};
     const [cert, key] = ['localhost.crt', 'localhost.key'].map((name) => readFileSync(new URL(name, import.meta.url)));
     console.log((await serveExcel({ cert, key }, 0)).address);`,
  );
  server = spawn(process.execPath, [script], { stdio: ['ignore', 'pipe', 'inherit'] });
  const said = await new Promise<string>((resolve) => server.stdout!.once('data', (data) => resolve(String(data))));
  port = Number(new URL(said.trim()).port);
}, 60_000);
afterAll(() => {
  server?.kill();
  rmSync(folder, { recursive: true, force: true });
});

const get = (path: string, host = 'localhost') =>
  new Promise<{ status: number; headers: IncomingHttpHeaders; length: number }>((resolve, reject) => {
    const ca = readFileSync(certificate('ca.crt'));
    const options = { port, path, ca, headers: { host: `${host}:${port}` }, servername: 'localhost' };
    request({ host: 'localhost', ...options }, (response) => {
      let length = 0;
      response.on('data', (chunk: Buffer) => (length += chunk.length));
      response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, length }));
    })
      .on('error', reject)
      .end();
  });

describe('the server for Excel', () => {
  it('gives everything that the manifest names, by https with a valid certificate', async () => {
    const addresses = addressesIn(manifest);
    expect(addresses.length).toBeGreaterThanOrEqual(11);
    for (const address of addresses) {
      const { status, length } = await get(new URL(address).pathname);
      expect([address, status, length > 50]).toEqual([address, 200, true]);
    }
  });

  it('lets Excel read the list of functions, and Excel on the web show the pane in a frame', async () => {
    const { headers } = await get('/functions.json');
    expect(headers).toMatchObject({
      'access-control-allow-origin': '*',
      'content-type': 'application/json; charset=utf-8',
      'cache-control': 'no-cache',
    });
    const pane = (await get('/taskpane.html')).headers;
    expect([pane['x-frame-options'], pane['content-security-policy']]).toEqual([undefined, undefined]);
  });

  it('answers to no other name, and to no other machine', async () => {
    expect((await get('/taskpane.html', 'plans.example.org')).status).toBe(403);
  });

  it('is at the place that the manifest and the command name', () => {
    const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      scripts: Record<string, string>;
    };
    expect(scripts['excel']).toMatch(
      /build\.mjs && office-addin-debugging start manifest\.xml .*--dev-server-port 3000$/,
    );
    expect(readFileSync(join(root, 'src/entries/serve.mjs'), 'utf8')).toContain('port = 3000');
    expect(addressesIn(manifest).every((address) => address.startsWith('https://localhost:3000/'))).toBe(true);
  });

  it('has a manifest that Microsoft’s own reader understands', () => {
    const reader = join(root, 'node_modules/office-addin-manifest/cli.js');
    const said = execFileSync(process.execPath, [reader, 'info', join(root, 'manifest.xml')], { encoding: 'utf8' });
    expect(said).toContain('Name: Channelwright');
    expect(said).toContain('Hosts: Workbook');
    expect(said).toContain('Permissions: ReadWriteDocument');
    expect(said).toMatch(/Version: \d+\.\d+\.\d+\.\d+/);
  });
});
