import type { ShadeWish, SizedNeed } from '@seamwright/cloth';
import type { Result } from '@seamwright/geometry';
import type { Bulk, BulkSubject, CurveSubject, ShadesSubject } from './look-ahead.ts';
import { onDemand } from './on-demand.ts';

export type { Bulk, BulkSubject, CurveSubject, ShadesSubject };

const failed = (what: string): string =>
  `${what} could not be worked out. Reload the page and try again; the pattern is kept.`;

export const shadesAsked = onDemand<ShadesSubject, readonly ShadeWish[]>(
  (worker, subject) => worker.shadeWishes(subject),
  failed('An order that hides the dark allowances'),
);

export const bulkAsked = onDemand<BulkSubject, Bulk>(
  (worker, subject) => worker.bulkOf(subject),
  failed('The layers of fabric'),
);

export const curveAsked = onDemand<CurveSubject, Result<SizedNeed[]>>(
  (worker, subject) => worker.curveOf(subject),
  failed('What other sizes need'),
);
