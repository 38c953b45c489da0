import { MM_PER_INCH } from '@seamwright/geometry';
import type { CheckedJob, CheckedSize } from './job.ts';
import { alone, lettersOf, sharedTemplates, type Template } from './templates.ts';

/** A foundation that the job asks for. */
export interface Wanted {
  /** Its own in the whole document. */
  readonly key: string;
  readonly template: Template;
  readonly size: CheckedSize;
  /** How many are to be printed. */
  readonly count: number;
}

/** All foundations of the job, size by size, in the order of their sections. */
export function wantedFoundations(job: CheckedJob): readonly Wanted[] {
  const templates = job.shareTemplates ? sharedTemplates(job.plan) : job.plan.sections.map(alone);
  const taken = new Set<string>();
  return job.sizes.flatMap((size, i) =>
    templates.map((template): Wanted => {
      const { letter } = template.section;
      const key = freeKey(i === 0 ? letter : `${letter}-${sizeKey(size, job)}`, taken);
      taken.add(key);
      return { key, template, size, count: size.copies * lettersOf(template).length };
    }),
  );
}

/** `4.5in`, `6x7in`, `15cm`: fit for an id in a file. */
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
