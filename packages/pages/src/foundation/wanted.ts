import { MM_PER_INCH } from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import { mirrorOntoItself } from '@seamwright/sewing';
import type { CheckedJob, CheckedSize } from '../job.ts';
import { cutNotes } from './cut-notes.ts';
import type { NoteOf } from './patch-facts.ts';
import { type Faces, printsFor, type Template, templatesFor } from './templates.ts';

/** A foundation that the job asks for. */
export interface Wanted {
  /** Its own in the whole document. */
  readonly key: string;
  readonly template: Template;
  readonly size: CheckedSize;
  /** How many are to be printed. */
  readonly count: number;
  /** What is cut for the patches in this size. */
  readonly noteOf: NoteOf;
}

/** All foundations of the job, size by size, in the order of their sections. */
export function wantedFoundations(job: CheckedJob): readonly Wanted[] {
  const { arrangement, plan, shareTemplates } = job;
  const mirrorOf = once(({ order }: Section) => mirrorOntoItself(arrangement, order));
  const templates = once((faces: Faces) => templatesFor({ plan, shareTemplates, mirrorOf }, faces));
  const taken = new Set<string>();
  return job.sizes.flatMap((size, i) => {
    const noteOf = cutNotes(job, size);
    return templates(facesOf(size)).map((template): Wanted => {
      const parts = [
        template.section.letter,
        ...(i === 0 ? [] : [sizeKey(size, job)]),
        ...(template.mirroredBlock ? ['mirrored'] : []),
      ];
      const key = freeKey(parts.join('-'), taken);
      taken.add(key);
      return { key, template, size, count: printsFor(template, size.copies, size.mirrored), noteOf };
    });
  });
}

const facesOf = ({ copies, mirrored }: CheckedSize): Faces =>
  mirrored === 0 ? 'as drawn' : copies === 0 ? 'mirrored' : 'both';

/** The function, which is not asked the same thing twice. */
function once<In, Out>(compute: (of: In) => Out): (of: In) => Out {
  const known = new Map<In, Out>();
  return (of) => {
    if (!known.has(of)) known.set(of, compute(of));
    return known.get(of)!;
  };
}

/** `4.5in`, `6x7in`, `15cm`: fit for an id in a file, which may have no spaces (HTML, id). */
function sizeKey({ width, height }: CheckedSize, { unit }: CheckedJob): string {
  const [across, down] = [width, height].map((side) =>
    unit === 'in' ? rounded(side) : rounded((side * MM_PER_INCH) / 10),
  );
  return `${across === down ? across : `${across}x${down}`}${unit}`;
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/** Sizes that differ by less than they are written with get numbers. */
function freeKey(key: string, taken: ReadonlySet<string>): string {
  if (!taken.has(key)) return key;
  let number = 2;
  while (taken.has(`${key}-${number}`)) number++;
  return `${key}-${number}`;
}
