import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const notCalled = fileURLToPath(new URL('not-called.ts', import.meta.url));

export default defineConfig({
  // Relative addresses: the built folder works from any path of any server.
  base: './',
  publicDir: '../public',
  plugins: [react()],
  resolve: { alias: { canvg: notCalled, html2canvas: notCalled, dompurify: notCalled } },
  worker: { format: 'es' },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    // The bundle budget reads the manifest to see what the first load holds.
    manifest: true,
    target: 'es2023',
  },
  server: { fs: { allow: [fileURLToPath(new URL('..', import.meta.url))] } },
});
