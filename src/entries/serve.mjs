// Serves dist/ to this machine only. Usage: node src/entries/serve.mjs [port], or --https for Excel on port 3000
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import { basename, extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../dist/', import.meta.url));
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};
// The grid styles itself with style attributes, hence 'unsafe-inline' for styles; scripts only ever come from here.
export const POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');
/** A worker has the policy of its own file. Only the solver compiles WebAssembly; the pages may not. */
const SOLVER_POLICY = POLICY.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'");
const HEADERS = {
  'content-security-policy': POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-cache',
};

/** Excel shows the pane in a frame of its own and reads functions.json from elsewhere; taskpane.html brings its own policy. */
const EXCEL_HEADERS = {
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'access-control-allow-origin': '*',
  'cache-control': 'no-cache',
};

const refuse = (response, status, text) =>
  response.writeHead(status, { ...HEADERS, 'content-type': 'text/plain; charset=utf-8' }).end(text);

/** A page elsewhere that points its own name at this machine must not reach the files. */
const isLoopback = (host = '') => /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/.test(host);

const answer = async (request, response, headers) => {
  if (!isLoopback(request.headers.host)) return refuse(response, 403, 'Only for this machine.');
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405, 'Only GET and HEAD.');
  let path;
  try {
    path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
  } catch {
    return refuse(response, 400, 'Not a path.');
  }
  if (path.endsWith('/')) path += 'workbench.html';
  const file = normalize(join(ROOT, path));
  if (!file.startsWith(ROOT.endsWith(sep) ? ROOT : ROOT + sep) || path.includes('\0'))
    return refuse(response, 404, 'Not found.');
  const found = await stat(file).catch(() => undefined);
  if (!found?.isFile()) return refuse(response, 404, 'Not found.');
  response.writeHead(200, {
    ...headers,
    ...(basename(file) === 'solver.js' &&
      headers['content-security-policy'] && { 'content-security-policy': SOLVER_POLICY }),
    'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
    'content-length': found.size,
  });
  if (request.method === 'HEAD') return response.end();
  createReadStream(file)
    .on('error', () => response.destroy())
    .pipe(response);
};

/** Resolves with the server and its address once it listens; port 0 takes a free one. */
export const serve = (port = 0) =>
  new Promise((resolve, reject) => {
    const server = createServer((request, response) => void answer(request, response, HEADERS));
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve({ server, address: `http://127.0.0.1:${server.address().port}/` }));
  });

/** The address that manifest.xml names, with a certificate that Microsoft's tool makes for this machine and has it trust. */
export const serveExcel = async (certificate, port = 3000) => {
  const { getHttpsServerOptions } = (await import('office-addin-dev-certs')).default;
  const server = createSecureServer(
    certificate ?? (await getHttpsServerOptions()),
    (request, response) => void answer(request, response, EXCEL_HEADERS),
  );
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, 'localhost', () => resolve({ server, address: `https://localhost:${server.address().port}/` }));
  });
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv.includes('--https')) {
    const { address } = await serveExcel();
    console.log(`Channelwright for Excel: ${address}`);
  } else {
    const { address } = await serve(Number(process.argv[2] ?? 4173));
    console.log(`Channelwright workbench: ${address}`);
  }
}
