import type { Arrangement } from '@seamwright/arrangement';
import type { Pressing } from '@seamwright/cloth';
import { type PairsOfJoin, type PressingRecord, pressingOf, withPressing } from '@seamwright/pattern';
import type { SewingPlan } from '@seamwright/sewing';
import { changeBlock } from '../../../store/changes.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import type { Study } from '../../../study/study.ts';

/** For each join of the plan, the patches that meet on its seam: the first of a pair is of the join's first unit. */
export function pairsOfJoins(
  { edges }: Arrangement,
  { sections, joins }: Pick<SewingPlan, 'sections' | 'joins'>,
): readonly PairsOfJoin[] {
  const units = new Map(sections.map(({ letter, order }) => [letter, new Set(order)]));
  return joins.map(({ units: [a, b], makes, line }) => {
    const [first, second] = [units.get(a)!, units.get(b)!];
    units.set(makes, new Set([...first, ...second]));
    return edges.flatMap(({ line: along, left, right }): PairsOfJoin => {
      if (along !== line) return [];
      if (first.has(left) && second.has(right)) return [[left, right]];
      return first.has(right) && second.has(left) ? [[right, left]] : [];
    });
  });
}

/** How each join is pressed, in the plan's order. */
export const pressedAs = (
  pairs: readonly PairsOfJoin[],
  pressings: readonly PressingRecord[],
  records: Study['records'],
  usual: Pressing,
): readonly Pressing[] => pairs.map((join) => pressingOf(pressings, join, records) ?? usual);

/** One step for undo: presses a join of the open block otherwise. */
export function press(label: string, pairs: PairsOfJoin, records: Study['records'], under: Pressing): void {
  const { id } = currentBlock(useWork.getState());
  changeBlock(`Press ${label}`, id, (block) => ({
    ...block,
    pressings: withPressing(block.pressings ?? [], pairs, records, under),
  }));
}

/** One step for undo: all joins of the open block are pressed as usual again. */
export function pressAsUsual(): void {
  const { id } = currentBlock(useWork.getState());
  changeBlock('Press all joins as usual', id, ({ pressings: _, ...block }) => block);
}
