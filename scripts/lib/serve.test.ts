import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { address, fileServer, listen, requestedPath } from './serve.mjs';

let parent: string;
let server: Server;
let port: number;

beforeAll(async () => {
  parent = mkdtempSync(join(tmpdir(), 'seamwright-serve-'));
  writeFileSync(join(parent, 'secret.txt'), 'not served');
  const folder = join(parent, 'dist');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(folder, 'index.html'), '<!doctype html>');
  writeFileSync(join(folder, '.hidden'), 'not served');
  writeFileSync(join(folder, 'assets', 'a b.js'), 'export {};');
  server = fileServer(folder);
  port = await listen(server, 0);
});

afterAll(() => {
  server.close();
  rmSync(parent, { recursive: true, force: true });
});

/** Asks with exactly these letters; `fetch` would tidy the path up first. */
const ask = (path: string, method = 'GET') =>
  new Promise<{ status: number; type: string | undefined; body: string }>((resolve, reject) => {
    request({ port, path, method, host: '127.0.0.1' }, (response) => {
      let body = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => {
        body += part;
      });
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, type: response.headers['content-type'], body }),
      );
    })
      .on('error', reject)
      .end();
  });

test('files are served with their types, the folder itself as its index', async () => {
  const html = { status: 200, type: 'text/html; charset=utf-8', body: '<!doctype html>' };
  expect(await ask('/')).toEqual(html);
  expect(await ask('/index.html?demo#x')).toEqual(html);
  expect(await ask('/assets/a%20b.js')).toEqual({
    status: 200,
    type: 'text/javascript; charset=utf-8',
    body: 'export {};',
  });
  expect(await ask('/', 'HEAD')).toEqual({ ...html, body: '' });
});

test.each([
  '/../secret.txt',
  '/assets/../../secret.txt',
  '/%2e%2e/secret.txt',
  '/..%2fsecret.txt',
  '/..%5csecret.txt',
  '/assets/..\\..\\secret.txt',
  '//secret.txt',
  '/.hidden',
  '/%00',
  '/%zz',
  '/assets',
  '/assets/',
  '/nothing.js',
])('%s is not there', async (path) => {
  expect(await ask(path)).toMatchObject({ status: 404, body: 'There is no such file.\n' });
});

test('nothing can be sent to it', async () => {
  expect((await ask('/', 'POST')).status).toBe(405);
});

test('an address on another computer or drive is no path', () => {
  expect(requestedPath('http://elsewhere.example/a.js')).toBeNull();
  expect(requestedPath('/C:/a.js')).toBeNull();
});

test('a port that is taken gives way to the next that is free', async () => {
  const second = fileServer(parent);
  const got = await listen(second, port);
  expect(got).toBeGreaterThan(port);
  expect(address(got)).toBe(`http://127.0.0.1:${got}/`);
  second.close();
});

test('with no other port to try, a taken one is an error', async () => {
  await expect(listen(fileServer(parent), port, 1)).rejects.toThrow('EADDRINUSE');
});
