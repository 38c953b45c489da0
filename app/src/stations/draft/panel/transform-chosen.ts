import type { Drawing } from '@seamwright/arrangement';
import { addRepeated, copyLines, type Parts, transformPartsSymmetric } from '@seamwright/drafting';
import type { Result, Transform } from '@seamwright/geometry';
import { currentSymmetry } from '../hand.ts';

/** Whether what is in hand goes to the new place, or a copy of it. */
export type How = 'move' | 'copy';

/** What is in hand, or a copy of it, in another place; repeated as everything is that is drawn. */
export const transformChosen = (drawing: Drawing, parts: Parts, by: Transform, how: How): Result<Drawing> =>
  how === 'move'
    ? transformPartsSymmetric(drawing, parts, by, currentSymmetry())
    : addRepeated(drawing, (before) => copyLines(before, parts.lines, by), currentSymmetry());

const COPIED = { Move: 'Moved', Turn: 'Turned', Mirror: 'Mirrored' } as const;

/** The step's name in the history. */
export const stepName = (what: keyof typeof COPIED, how: How): string =>
  how === 'move' ? what : `${COPIED[what]} copy`;
