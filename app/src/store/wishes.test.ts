import { beforeEach, expect, test } from 'vitest';
import { undo } from './changes.ts';
import { addPins, removePins, samePin, wish } from './wishes.ts';
import { currentWishes, useWork } from './work.ts';

const start = useWork.getState();
beforeEach(() => useWork.setState(start, true));

const wishes = () => currentWishes(useWork.getState());
const steps = () => useWork.getState().history.past.map(({ label }) => label);

test('a wish is one step, and undo takes it back', () => {
  wish('Sew by small sections', { choice: 'small sections' });
  expect(wishes().choice).toBe('small sections');
  expect(steps()).toEqual(['Sew by small sections']);
  undo();
  expect(wishes().choice).toBe('fewest foundations');
});

test('a wish for what is so already is no step', () => {
  wish('Sew by fewest foundations', { choice: 'fewest foundations' });
  expect(steps()).toEqual([]);
});

test('the same pin is added once', () => {
  addPins('Pin', [{ kind: 'together', patches: ['a', 'b'] }]);
  addPins('Pin', [{ kind: 'together', patches: ['b', 'a'] }]);
  expect(wishes().pins).toHaveLength(1);
  expect(steps()).toHaveLength(1);
});

test('a patch has one wish for its section’s letter, the latest', () => {
  addPins('Pin', [{ kind: 'letter', patch: 'a', letter: 'K' }]);
  addPins('Pin', [{ kind: 'letter', patch: 'b', letter: 'L' }]);
  addPins('Pin', [{ kind: 'letter', patch: 'a', letter: 'M' }]);
  expect(wishes().pins).toEqual([
    { kind: 'letter', patch: 'b', letter: 'L' },
    { kind: 'letter', patch: 'a', letter: 'M' },
  ]);
});

test('pins are removed in one step', () => {
  addPins('Pin', [
    { kind: 'first', patch: 'a' },
    { kind: 'before', patch: 'a', than: 'b' },
  ]);
  removePins('Remove lost pins', wishes().pins);
  expect(wishes().pins).toEqual([]);
  undo();
  expect(wishes().pins).toHaveLength(2);
});

test('before has a direction, together and apart have none', () => {
  expect(samePin({ kind: 'before', patch: 'a', than: 'b' }, { kind: 'before', patch: 'b', than: 'a' })).toBe(
    false,
  );
  expect(samePin({ kind: 'apart', patches: ['a', 'b'] }, { kind: 'apart', patches: ['b', 'a'] })).toBe(true);
  expect(samePin({ kind: 'apart', patches: ['a', 'b'] }, { kind: 'together', patches: ['a', 'b'] })).toBe(
    false,
  );
});
