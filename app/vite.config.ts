import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const notCalled = fileURLToPath(new URL('not-called.ts', import.meta.url));

/** Our packages only define things: a module of theirs from which nothing is used can be left out with all it imports. */
const treeshake = {
  moduleSideEffects: [{ test: /\/packages\/[a-z]+\/src\//, sideEffects: false }],
};

export default defineConfig({
  // Relative addresses: the built folder works from any path of any server.
  base: './',
  publicDir: '../public',
  plugins: [react()],
  resolve: { alias: { canvg: notCalled, html2canvas: notCalled, dompurify: notCalled } },
  worker: { format: 'es', rolldownOptions: { treeshake } },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    // The bundle budget reads the manifest to see what the first load holds.
    manifest: true,
    target: 'es2023',
    rolldownOptions: { treeshake },
  },
  server: { fs: { allow: [fileURLToPath(new URL('..', import.meta.url))] } },
});
