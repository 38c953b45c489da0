import { entryFiles, firstVisitFiles, readBuilt, readManifest } from './scripts/lib/first-load.mjs';

const manifest = readManifest();
/** @param {readonly string[]} files */
const inDist = (files) => files.map((file) => `app/dist/${file}`);

/**
 * Scripts and style sheets, as they travel (gzip). Fonts and pictures are not in it.
 *
 * Each limit is a tenth above what the first three stations took (143 and 310 kB): room for small additions, while a
 * library that slips in shows. Of the second, the canvas is 85 kB and the worker 62 kB.
 */
export default [
  {
    name: 'Before anything is shown',
    path: inDist(entryFiles(manifest)),
    gzip: true,
    limit: '160 kB',
  },
  {
    name: 'Before a line can be drawn: that, the Draft station and the worker that studies the block',
    path: inDist(firstVisitFiles(manifest, readBuilt)),
    gzip: true,
    limit: '340 kB',
  },
];
