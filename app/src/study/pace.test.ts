import { expect, it } from 'vitest';
import { Pace } from './pace.ts';

it('expects of the next study what the last ones took, by their patches', () => {
  const pace = new Pace();
  for (const patches of [100, 200, 100, 200]) pace.note(patches, patches / 20);
  // Too few to tell.
  expect(pace.expected(10)).toBe(Number.POSITIVE_INFINITY);
  pace.note(50, 2.5);
  // Arithmetic: each took a twentieth of a millisecond for a patch.
  expect(pace.expected(300)).toBeCloseTo(15);
});

it('is not misled by studies that were held up, and follows when they become quicker or slower', () => {
  const pace = new Pace();
  for (const time of [90, 10, 90, 70, 80]) pace.note(100, time);
  expect(pace.expected(100)).toBeCloseTo(10);
  for (let i = 0; i < 5; i += 1) pace.note(100, 40);
  expect(pace.expected(100)).toBeCloseTo(40);
  pace.note(100, 4);
  expect(pace.expected(100)).toBeCloseTo(4);
});

it('takes a block without patches for one with a single patch', () => {
  const pace = new Pace();
  for (let i = 0; i < 5; i += 1) pace.note(0, 2);
  expect(pace.expected(0)).toBe(2);
});
