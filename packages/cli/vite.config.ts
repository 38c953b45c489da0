import { copyFileSync, mkdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';

const here = fileURLToPath(new URL('.', import.meta.url));

/** The fonts of the pages package, as `main.ts` expects them. */
const FONTS = {
  regular: 'source-sans/TTF/SourceSans3-Regular.ttf',
  semibold: 'source-sans/TTF/SourceSans3-Semibold.ttf',
};

/** The solver's WebAssembly, as `main.ts` expects it. */
function copySolver(): Plugin {
  let folder = '';
  return {
    name: 'copy-solver',
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir);
    },
    writeBundle() {
      const wasm = createRequire(import.meta.url).resolve('highs/runtime');
      copyFileSync(wasm, join(folder, 'highs.wasm'));
    },
  };
}

function copyFonts(): Plugin {
  let folder = '';
  return {
    name: 'copy-fonts',
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir, 'fonts');
    },
    writeBundle() {
      const fromPages = createRequire(new URL('../pages/package.json', import.meta.url));
      mkdirSync(folder, { recursive: true });
      for (const [name, file] of Object.entries(FONTS))
        copyFileSync(fromPages.resolve(file), join(folder, `${name}.ttf`));
    },
  };
}

/** Runs with Node alone: everything but Node's own modules is in it. What writes PDFs is loaded only when one is written, and the solver when it is
 * needed. */
export default defineConfig({
  root: here,
  plugins: [copyFonts(), copySolver()],
  ssr: { noExternal: true },
  build: {
    ssr: 'src/main.ts',
    outDir: 'dist',
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    rollupOptions: { output: { entryFileNames: 'seamwright.js' } },
  },
});
