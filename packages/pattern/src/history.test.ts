import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  endGroup,
  goToStep,
  type History,
  record,
  redo,
  redoLabel,
  startHistory,
  undo,
  undoLabel,
} from './history.ts';

/** Documents are compared by identity: undo must give back the very same one. */
interface Doc {
  readonly n: number;
}

type Action =
  | { readonly kind: 'edit'; readonly group: string | null }
  | { readonly kind: 'endGroup' | 'undo' | 'redo' };

const actions: fc.Arbitrary<Action[]> = fc.array(
  fc.oneof(
    {
      weight: 4,
      arbitrary: fc.record({
        kind: fc.constant('edit' as const),
        group: fc.option(fc.constantFrom('a', 'b')),
      }),
    },
    {
      weight: 3,
      arbitrary: fc.record({ kind: fc.constantFrom('endGroup' as const, 'undo' as const, 'redo' as const) }),
    },
  ),
  { maxLength: 60 },
);

/** The plainest model: all documents in a row and a place in it. */
class Model {
  documents: Doc[];
  at = 0;
  group: string | null = null;
  constructor(first: Doc) {
    this.documents = [first];
  }
  edit(next: Doc, group: string | null) {
    if (group !== null && group === this.group) {
      this.documents[this.at] = next;
    } else {
      this.documents = [...this.documents.slice(0, this.at + 1), next];
      this.at += 1;
    }
    this.group = group;
  }
  move(by: 1 | -1) {
    if (this.documents[this.at + by] === undefined) return;
    this.at += by;
    this.group = null;
  }
}

function play(first: Doc, script: readonly Action[]): { history: History<Doc>; model: Model } {
  let history = startHistory(first);
  const model = new Model(first);
  script.forEach((action, index) => {
    if (action.kind === 'edit') {
      const next = { n: index };
      history = record(history, next, `edit ${index}`, action.group);
      model.edit(next, action.group);
    } else if (action.kind === 'endGroup') {
      history = endGroup(history);
      model.group = null;
    } else {
      history = action.kind === 'undo' ? undo(history) : redo(history);
      model.move(action.kind === 'undo' ? -1 : 1);
    }
  });
  return { history, model };
}

const undoAll = (history: History<Doc>): History<Doc> => {
  let h = history;
  while (undoLabel(h) !== null) h = undo(h);
  return h;
};

describe('history', () => {
  it('undoing everything gives back the first document itself, and redoing everything the last', () => {
    fc.assert(
      fc.property(actions, (script) => {
        const first = { n: -1 };
        const { history } = play(first, script);
        const start = undoAll(history);
        expect(start.present).toBe(first);
        let end = start;
        for (let i = 0; i < history.past.length; i++) end = redo(end);
        expect(end.present).toBe(history.present);
        expect(end.past).toEqual(history.past);
        expect(end.future).toEqual(history.future);
      }),
      { seed: 41, numRuns: 300 },
    );
  });

  it('agrees with a row of documents and a place in it', () => {
    fc.assert(
      fc.property(actions, (script) => {
        const { history, model } = play({ n: -1 }, script);
        const row = [
          ...history.past.map((step) => step.document),
          history.present,
          ...history.future.map((step) => step.document),
        ];
        expect(row).toEqual(model.documents);
        expect(history.past.length).toBe(model.at);
      }),
      { seed: 42, numRuns: 300 },
    );
  });

  it('goes to any step, and back, as by undoing and doing again', () => {
    fc.assert(
      fc.property(actions, fc.integer({ min: 0, max: 70 }), (script, count) => {
        const { history, model } = play({ n: -1 }, script);
        const there = goToStep(history, count);
        const place = Math.min(count, model.documents.length - 1);
        expect(there.past.length).toBe(place);
        expect(there.present).toBe(model.documents[place]);
        const back = goToStep(there, history.past.length);
        expect(back.past).toEqual(history.past);
        expect(back.present).toBe(history.present);
        expect(back.future).toEqual(history.future);
      }),
      { seed: 43, numRuns: 300 },
    );
  });

  it('makes a drag one step, and the next drag another', () => {
    let h = startHistory({ n: 0 });
    for (let n = 1; n <= 50; n++) h = record(h, { n }, 'Move a corner', 'drag');
    h = endGroup(h);
    for (let n = 51; n <= 100; n++) h = record(h, { n }, 'Move a corner', 'drag');
    expect(h.past.map((step) => step.document.n)).toEqual([0, 50]);
    expect(undo(h).present).toEqual({ n: 50 });
  });

  it('starts a new step when undo comes between two edits of one group', () => {
    let h = record(startHistory({ n: 0 }), { n: 1 }, 'Move', 'drag');
    h = record(undo(h), { n: 2 }, 'Move', 'drag');
    expect(h.past).toHaveLength(1);
    expect(undo(h).present).toEqual({ n: 0 });
  });

  it('names what undo and redo do', () => {
    const h = record(record(startHistory({ n: 0 }), { n: 1 }, 'Draw a split'), { n: 2 }, 'Delete a split');
    expect([undoLabel(h), redoLabel(h)]).toEqual(['Delete a split', null]);
    expect([undoLabel(undo(h)), redoLabel(undo(h))]).toEqual(['Draw a split', 'Delete a split']);
  });

  it('takes an edit that changes nothing for no step', () => {
    const h = startHistory({ n: 0 });
    expect(record(h, h.present, 'Nothing')).toBe(h);
    expect(undo(h)).toBe(h);
    expect(redo(h)).toBe(h);
  });

  it('has no limit on the number of steps', () => {
    const first = { n: 0 };
    let h: History<Doc> = startHistory(first);
    for (let n = 1; n <= 5000; n++) h = record(h, { n }, 'Edit');
    expect(undoAll(h).present).toBe(first);
  });
});
