import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';

/** Only this computer reaches the server. */
const HOST = '127.0.0.1';

/** @type {Record<string, string>} */
const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.otf': 'font/otf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/**
 * The path inside the served folder that an address asks for, or `null` when it asks for none: for a folder above,
 * for a hidden file, or in letters that cannot be read.
 *
 * @param {string} url the request's, e.g. `/assets/a.js?x=1`
 * @returns {string | null} with slashes, without one at the start
 */
export function requestedPath(url) {
  let path;
  try {
    path = decodeURIComponent(url.replace(/[?#].*$/s, ''));
  } catch {
    return null;
  }
  if (!path.startsWith('/') || /[\0\\:]/.test(path)) return null;
  const parts = path.slice(1).split('/');
  if (parts.at(-1) === '') parts[parts.length - 1] = 'index.html';
  // A leading dot stands for folders above (..) and for hidden files, and neither is served; nor is an empty part.
  return parts.some((part) => part === '' || part.startsWith('.')) ? null : parts.join('/');
}

/**
 * Serves a folder's files to this computer.
 *
 * @param {string} folder
 * @returns {import('node:http').Server}
 */
export function fileServer(folder) {
  return createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const path = requestedPath(request.url ?? '/');
    const file = path === null ? null : join(folder, path);
    const stats = file === null ? undefined : statSync(file, { throwIfNoEntry: false });
    if (file === null || !stats?.isFile()) {
      response
        .writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' })
        .end('There is no such file.\n');
      return;
    }
    response.writeHead(200, {
      'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream',
      'Content-Length': stats.size,
      // A new build has to be seen on the next visit.
      'Cache-Control': 'no-cache',
      'X-Content-Type-Options': 'nosniff',
    });
    if (request.method === 'HEAD') {
      response.end();
      return;
    }
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response);
  });
}

/**
 * Starts listening on the first free port from `port` on.
 *
 * @param {import('node:http').Server} server
 * @param {number} port 0: any that is free
 * @param {number} tries how many ports to try
 * @returns {Promise<number>} the port
 */
export async function listen(server, port, tries = 50) {
  for (let candidate = port; ; candidate++) {
    try {
      await new Promise((resolve, reject) => {
        server.once('error', reject);
        server.listen(candidate, HOST, () => {
          server.off('error', reject);
          resolve(undefined);
        });
      });
      const address = server.address();
      if (address === null || typeof address === 'string') throw new Error('the server has no port');
      return address.port;
    } catch (error) {
      const taken = /** @type {NodeJS.ErrnoException} */ (error).code === 'EADDRINUSE';
      if (!taken || candidate + 1 >= port + tries) throw error;
    }
  }
}

/**
 * The address of a port.
 *
 * @param {number} port
 */
export const address = (port) => `http://${HOST}:${port}/`;
