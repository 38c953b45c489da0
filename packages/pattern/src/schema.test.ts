import { expect, it } from 'vitest';
import { greyPng } from '../test/png.ts';
import { parsePattern } from './parse-pattern.ts';

/** Every field that a pattern file can have. */
const everything = {
  format: 'seamwright-pattern/1',
  title: 'Harbour',
  unit: 'in',
  fabrics: [
    {
      id: 'sky',
      name: 'Sky',
      colour: '#88aacc',
      width: 42,
      grain: 'straight',
      swatch: { picture: 'pic', width: 2 },
    },
  ],
  colourways: [
    { id: 'day', name: 'Day' },
    { id: 'night', name: 'Night' },
  ],
  blocks: [
    {
      id: 'boat',
      name: 'Boat',
      drawing: {
        points: {
          a: { id: 'a', x: 0, y: 0 },
          b: { id: 'b', x: 6, y: 0 },
          c: { id: 'c', x: 6, y: 6 },
          d: { id: 'd', x: 0, y: 6 },
          e: { id: 'e', x: 3, y: 0, on: ['edge:a'] },
        },
        outline: ['a', 'b', 'c', 'd'],
        splits: [{ id: 's', from: 'e', to: 'c' }],
      },
      grid: 0.5,
      gridParts: 12,
      patches: [
        { id: 'p', signature: '', at: { x: 1, y: 1 }, note: '', fabric: 'sky', fabrics: { night: 'sky' } },
        { id: 'q', signature: '', at: { x: 5, y: 1 }, note: '' },
      ],
      sewing: {
        pins: [
          { kind: 'first', patch: 'p' },
          { kind: 'before', patch: 'p', than: 'q' },
          { kind: 'together', patches: ['p', 'q'] },
          { kind: 'apart', patches: ['p', 'q'] },
          { kind: 'letter', patch: 'p', letter: 'A' },
        ],
        choice: 'fewest foundations',
        mostPatches: 3,
        partialSeams: false,
      },
      pressings: [{ patches: ['p', 'q'], under: 'open' }],
      tracing: {
        picture: 'pic',
        x: 0,
        y: 0,
        width: 6,
        turn: 0,
        strength: 0.5,
        locked: false,
        shown: true,
      },
    },
  ],
  pictures: {
    pic: {
      name: 'Boat',
      width: 1,
      height: 1,
      data: `data:image/png;base64,${Buffer.from(greyPng(1, 1)).toString('base64')}`,
    },
  },
};

type Place = readonly (string | number)[];

/** All places of a value, its own first. */
const placesOf = (value: unknown, place: Place = []): readonly Place[] => [
  place,
  ...(typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, part]) => placesOf(part, [...place, key]))
    : []),
];

/** What is said of the file with something else at a place; null where that can be read. */
function saidOf(place: Place, other: unknown): string | null {
  const document = structuredClone(everything);
  let parent = document as unknown as Record<string, unknown>;
  for (const key of place.slice(0, -1)) parent = parent[key] as typeof parent;
  parent[place.at(-1)!] = other;
  const read = parsePattern(JSON.stringify(document));
  return read.ok ? null : read.problem.what;
}

it('every field can be read', () => {
  expect(saidOf(['title'], 'Harbour')).toBeNull();
});

const OTHERS = [null, true, 0, -1, 2.5, 1e21, '', 'A1', [], ['p'], {}, { surplus: 1 }];

it('whatever stands at whichever place, it is read or refused in words of our own', () => {
  const said = new Set<string>();
  for (const place of placesOf(everything).slice(1))
    for (const other of OTHERS) said.add(saidOf(place, other) ?? 'read');
  const form = [...said].filter((what) => /^A field of the pattern file /.test(what));
  expect(form.length).toBeGreaterThan(20);
  for (const what of form)
    expect(what).toMatch(
      /has to (be (a|an|at|above|one|true|"first"|"fewest|"in"|"straight"|"seamwright)|hold (a|two)\b)/,
    );
});
