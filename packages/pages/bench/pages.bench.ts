import { measureDensity } from './density.ts';
import { measureWriting } from './writing.ts';

/** How full the sheets are, and how long 500 foundations take. Run: `npm run bench -- pages`. */
measureDensity();
await measureWriting();
