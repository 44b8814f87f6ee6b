// Serves the built app from a folder below the root, as a plain static host would: no rewriting, 404 for what is not there.
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { join, normalize } from 'node:path';
import { headersOf } from '../../build/headers.js';

const FOLDER = '/bench/';
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
  response.writeHead(200, headersOf(inside === '.' ? 'index.html' : inside));
  createReadStream(file).pipe(response);
}).listen(port, 'localhost');
