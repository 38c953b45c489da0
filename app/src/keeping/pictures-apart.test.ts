import {
  type Block,
  type History,
  newTracing,
  type Pattern,
  type Picture,
  parsePattern,
  picturesOf,
  record,
  startHistory,
  writePattern,
} from '@seamwright/pattern';
import { expect, test } from 'vitest';
import { freshPattern } from '../store/fresh.ts';
import { forgetHeld, putBack, takeApart, textWhole } from './pictures-apart.ts';

/** A PNG of one pixel: PNG 3rd edition, written by Node's zlib. */
const ONE_PIXEL =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==';

const lighthouse: Picture = { name: 'lighthouse.png', width: 1, height: 1, data: ONE_PIXEL };
const PLACE = { x: 3, y: 3, width: 6, turn: 0 };

const traced = (pattern: Pattern, picture: Picture, strength = 1): Pattern => ({
  ...pattern,
  blocks: pattern.blocks.map(
    (block): Block => ({ ...block, tracing: { ...newTracing(picture, PLACE), strength } }),
  ),
});

/** A picture comes in, is faded twice; the last is undone. */
function edited(picture: Picture): History<Pattern> {
  const fresh = freshPattern();
  let history = startHistory(fresh);
  for (const strength of [1, 0.5, 0.25]) history = record(history, traced(fresh, picture, strength), 'Fade');
  const [last] = history.past.slice(-1);
  return {
    past: history.past.slice(0, -1),
    present: last!.document,
    future: [{ document: history.present, label: last!.label }],
    group: null,
  };
}

test('what the shelf holds has no picture in it, and comes back as it was, sharing one', () => {
  const history = edited(lighthouse);
  const apart = takeApart('work-1', history);
  expect(apart.fresh.map(([, data]) => data)).toEqual([ONE_PIXEL]);
  // As IndexedDB copies what it is given.
  const kept = structuredClone({ ...apart.history, text: writePattern(apart.history.present) });
  expect(JSON.stringify(kept)).not.toContain(ONE_PIXEL);

  const pictures = new Map(apart.fresh);
  const parsed = parsePattern(textWhole(kept.text, pictures));
  if (!parsed.ok) throw new Error(parsed.problem.what);
  const { past, future } = kept;
  const back = putBack('work-1', { past, present: parsed.value.pattern, future }, pictures);
  expect({ ...back, group: null }).toEqual(history);
  const all = [back.present, ...back.past.map((s) => s.document), ...back.future.map((s) => s.document)];
  expect(new Set(all.flatMap(picturesOf)).size).toBe(1);
  // And it is not written again.
  expect(takeApart('work-1', back)).toMatchObject({ fresh: [], gone: [] });
});

test('a picture is written once, and taken away when no step shows it any more', () => {
  const history = edited(lighthouse);
  const first = takeApart('work-2', history);
  // Not yet done: a second try writes it again.
  expect(takeApart('work-2', history).fresh).toEqual(first.fresh);
  first.done();
  const second = takeApart('work-2', history);
  expect(second).toMatchObject({ fresh: [], gone: [] });
  expect(second.stay).toEqual(first.fresh.map(([key]) => key));
  const without = takeApart('work-2', startHistory(freshPattern()));
  expect(without).toMatchObject({ fresh: [], stay: [], gone: second.stay });
});

test('documents go on sharing what they share', () => {
  const [one, other] = [takeApart('work-3', edited(lighthouse)), takeApart('work-3', edited(lighthouse))];
  expect(one.history.present).not.toBe(other.history.present);
  const history = edited(lighthouse);
  const [first, again] = [takeApart('work-3', history), takeApart('work-3', history)];
  expect(first.history.present.blocks[0]).toBe(again.history.present.blocks[0]);
});

test('each work has pictures of its own, and all are written again after a work was deleted', () => {
  const history = edited(lighthouse);
  const first = takeApart('work-4', history);
  first.done();
  expect(takeApart('work-5', history).fresh).toHaveLength(1);
  forgetHeld('work-4');
  expect(takeApart('work-4', history).fresh.map(([, data]) => data)).toEqual([ONE_PIXEL]);
});
