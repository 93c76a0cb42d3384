#!/usr/bin/env node
// Serves the built app of this folder to this machine alone: `npx .` once it is built, or `node .ci/serve.mjs`.
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const DIST = fileURLToPath(new URL('../dist', import.meta.url));
const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** The file of an address, within `dist/`; null where there is none. */
function fileOf(url) {
  let path;
  try {
    path = normalize(join(DIST, decodeURIComponent(new URL(url, 'http://localhost').pathname)));
  } catch {
    return null;
  }
  if (path === DIST || path === DIST + sep) path = join(DIST, 'index.html');
  return path.startsWith(DIST + sep) && existsSync(path) && statSync(path).isFile() ? path : null;
}

/** Answers every request. */
function answer(request, response) {
  const file = request.method === 'GET' || request.method === 'HEAD' ? fileOf(request.url) : null;
  if (file === null) {
    response.writeHead(404, { 'content-type': 'text/plain' }).end('There is nothing here.');
    return;
  }
  // Names of assets hold what is in them; everything else is asked for anew.
  const kept = file.includes(`${sep}assets${sep}`) ? 'public, max-age=31536000, immutable' : 'no-cache';
  response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream', 'cache-control': kept });
  if (request.method === 'HEAD') response.end();
  else createReadStream(file).pipe(response);
}

const at = process.argv.indexOf('--port');
const port = at < 0 ? 4173 : Number(process.argv[at + 1]);
if (!existsSync(join(DIST, 'index.html'))) {
  console.error('The app is not built yet: run `npm run build` first.');
  process.exit(1);
}
if (!Number.isInteger(port) || port < 0 || port > 65535) {
  console.error('--port takes a number from 0 to 65535.');
  process.exit(1);
}
// This machine alone: what anybody makes here is nobody else's to see, and other devices need https.
const server = createServer(answer).listen(port, '127.0.0.1', () =>
  console.log(`Pullstack is at http://localhost:${server.address().port}/`),
);
server.on('error', (error) => {
  console.error(error.code === 'EADDRINUSE' ? `Port ${port} is taken; --port names another.` : error.message);
  process.exit(1);
});
