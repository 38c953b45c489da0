import type { Fabric } from '@seamwright/pattern';
import { create } from 'zustand';
import { endStep } from '../../store/changes.ts';
import { fabricsOf, paintPatches } from '../../store/fabrics.ts';
import { useWork } from '../../store/work.ts';
import type { Study } from '../../study/study.ts';
import { type Reach, reached } from './reach.ts';

/** What presses on the block do: cut patches from a fabric, or take what they have off them. */
export interface Brush {
  /** The id of the fabric; null takes it off. One that is gone means the first. */
  readonly fabric: string | null;
  /** What a press on one patch paints. */
  readonly reach: Reach;
}

/** Apart from the work: which fabric is at hand is no part of the pattern. */
export const useBrush = create<Brush>()(() => ({ fabric: '', reach: 'one' }));

/** The fabric at hand; null where it takes fabrics off, or there are none. */
export function fabricAtHand({ fabric }: Brush, fabrics: readonly Fabric[]): Fabric | null {
  if (fabric === null) return null;
  return fabrics.find(({ id }) => id === fabric) ?? fabrics[0] ?? null;
}

/** Drags are told apart by their number: each is one step for undo. */
let strokes = 0;

export function beginStroke(): void {
  strokes += 1;
}

/** Paints a patch, and those that are like it as far as the brush reaches, as a part of the stroke that is under way. */
export function paint(study: Study, index: number): void {
  const brush = useBrush.getState();
  const fabric = fabricAtHand(brush, fabricsOf(useWork.getState()));
  const patches = reached(study, index, brush.reach).map((one) => study.records[one]!.id);
  paintPatches(patches, fabric, `stroke ${strokes}`);
}

export const endStroke = endStep;
