import { firstLoad, readManifest } from './scripts/lib/first-load.mjs';

/** What a visit loads before anything is asked for; fonts, pictures and what loads later are not in it. */
export default [
  {
    name: 'First load of the application (scripts and style sheets)',
    path: firstLoad(readManifest()).map((file) => `app/dist/${file}`),
    gzip: true,
    limit: '260 kB',
  },
];
