// Serves the built app from a folder below the root, as a plain static host would: no rewriting, 404 for what is not there.
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

const FOLDER = '/bench/';
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

const port = Number(process.argv[2]);
const root = process.argv[3] ?? 'dist';

createServer((request, response) => {
  const path = new URL(request.url ?? '/', 'http://localhost').pathname;
  const inside = path.startsWith(FOLDER) ? normalize(path.slice(FOLDER.length)) : '..';
  const file = join(root, inside === '.' ? 'index.html' : inside);
  if (inside.startsWith('..') || !existsSync(file) || !statSync(file).isFile()) {
    response.writeHead(404).end('not here');
    return;
  }
  response.writeHead(200, {
    'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
    'cache-control': 'no-cache',
  });
  createReadStream(file).pipe(response);
}).listen(port, 'localhost');
