import { type Drawing, drawingFromSegments, type PatchRecord } from '@seamwright/arrangement';
import { type Block, NO_WISHES, namedPatches, resolvePins, type SewingWishes } from '@seamwright/pattern';
import { SHAPE_LIMITS } from '@seamwright/sewing';
import { expect, test } from 'vitest';
import { freshBlock } from '../store/fresh.ts';
import { toPlan } from './other-blocks.ts';
import { planBlock } from './planned.ts';
import { QuickStudies } from './quick-studies.ts';

const OUTLINE = [
  { x: 0, y: 0 },
  { x: 6, y: 0 },
  { x: 6, y: 6 },
  { x: 0, y: 6 },
];
const drawn = (...lines: readonly (readonly [number, number, number, number])[]): Drawing =>
  drawingFromSegments(
    OUTLINE,
    lines.map(([x1, y1, x2, y2]) => ({ a: { x: x1, y: y1 }, b: { x: x2, y: y2 } })),
  );

/** The block with the records that its drawing has now. */
function studied(block: Block): Block {
  const { drawing, patches: records, sewing: wishes = NO_WISHES } = block;
  const named = namedPatches(block);
  const answer = new QuickStudies().answer({ drawing, records, named, wishes, limits: SHAPE_LIMITS });
  return { ...block, patches: answer.records };
}

const lowest = (records: readonly PatchRecord[]): string =>
  records.reduce((low, record) => (record.at.y > low.at.y ? record : low)).id;

test('a pin whose patch is gone stays lost, and a pressing goes to no other, when a patch is divided afterwards', () => {
  const rows = studied({ ...freshBlock('Harbour'), drawing: drawn([0, 2, 6, 2], [0, 4, 6, 4]) });
  const third = lowest(rows.patches);
  const [first] = rows.patches.map(({ id }) => id).filter((id) => id !== third);
  const sewing: SewingWishes = { ...NO_WISHES, pins: [{ kind: 'first', patch: third }] };
  const wished: Block = { ...rows, sewing, pressings: [{ patches: [third, first!], under: 'open' }] };

  const two = studied({ ...wished, drawing: drawn([0, 2, 6, 2]) });
  expect(resolvePins(sewing.pins, two.patches).lost).toEqual(sewing.pins);
  const divided: Block = { ...two, drawing: drawn([0, 2, 6, 2], [3, 0, 3, 2]) };
  for (const { patches } of [studied(divided), { patches: planBlock(toPlan(divided))!.records }]) {
    expect(patches).toHaveLength(3);
    expect(patches.map(({ id }) => id)).not.toContain(third);
    expect(resolvePins(sewing.pins, patches)).toEqual({ pins: [], lost: sewing.pins });
  }
});
