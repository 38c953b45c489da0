import { expect, it } from 'vitest';
import { expectMendedInTheEnd, expectWindmillMended } from './repairing.ts';

it('4,500 more windmills are mended, by every repair that is offered', () => {
  let offered = 0;
  for (let seed = 501; seed <= 5000; seed += 1) offered += expectWindmillMended(seed);
  expect(offered).toBeGreaterThan(20_000);
});

it('seams that stop at each other everywhere are mended one after the other, however many', () => {
  let mended = 0;
  for (let seed = 13; seed <= 60; seed += 1) mended += expectMendedInTheEnd(seed, 10);
  for (let seed = 1; seed <= 150; seed += 1) mended += expectMendedInTheEnd(seed, 20);
  expect(mended).toBeGreaterThan(300);
});
