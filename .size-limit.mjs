import { entryFiles, firstVisitFiles, readBuilt, readManifest } from './scripts/lib/first-load.mjs';

const manifest = readManifest();
/** @param {readonly string[]} files */
const inDist = (files) => files.map((file) => `app/dist/${file}`);

/** Scripts and style sheets, as they travel (gzip). Fonts and pictures are not in it. */
export default [
  {
    name: 'Before anything is shown',
    path: inDist(entryFiles(manifest)),
    gzip: true,
    limit: '260 kB',
  },
  {
    name: 'Before a line can be drawn: that, the Draft station and the worker that studies the block',
    path: inDist(firstVisitFiles(manifest, readBuilt)),
    gzip: true,
    limit: '330 kB',
  },
];
