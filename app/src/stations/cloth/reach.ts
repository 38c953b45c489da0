import { inTheSamePlace, ofTheSameShape } from '@seamwright/arrangement';
import type { Study } from '../../study/study.ts';

/** How far one press of the brush reaches. */
export type Reach = 'one' | 'turned' | 'turned over' | 'shape';

export const REACHES = [
  { value: 'one', label: 'One', name: 'One: that patch alone' },
  { value: 'turned', label: 'Turned', name: 'Turned: all in the same place when the block is turned' },
  {
    value: 'turned over',
    label: 'Mirrored',
    name: 'Mirrored: all in the same place when it is turned or mirrored',
  },
  { value: 'shape', label: 'Same shape', name: 'Same shape: all of its shape, wherever they lie' },
] as const satisfies readonly { value: Reach; label: string; name: string }[];

/** The patches that a press on one paints, by index: itself is among them. */
export function reached({ arrangement }: Study, index: number, reach: Reach): readonly number[] {
  const patch = arrangement?.patches[index];
  if (arrangement === null || patch === undefined || reach === 'one') return [index];
  return reach === 'shape'
    ? ofTheSameShape(arrangement, patch)
    : inTheSamePlace(arrangement, patch, reach === 'turned over');
}
