import type { Finding, Repair } from '@seamwright/arrangement';
import { expect, test } from 'vitest';
import { RING, studyOf } from '../test/study-of.ts';
import { findingsToMend, keepingRepairs, repairsAreSought, withRepairs } from './mending.ts';

const REPAIR: Repair = { message: ['Let it run on'], splits: [] };

/** A study with one finding: four seams that chase each other. */
const study = studyOf(RING);
const finding = study.findings[0]!;

test('repairs are looked for once for each finding', () => {
  expect(findingsToMend(study)).toEqual([finding]);
  expect(repairsAreSought(study, finding)).toBe(false);
  const mended = withRepairs(study, finding, [REPAIR]);
  expect(mended.findings[0]!.repairs).toEqual([REPAIR]);
  expect(findingsToMend(mended)).toEqual([]);
  expect(repairsAreSought(mended, mended.findings[0]!)).toBe(true);
});

test('where none were found, the finding keeps what it came with', () => {
  const own: Finding = { ...finding, repairs: [REPAIR] };
  const mended = withRepairs({ ...study, findings: [own] }, own, []);
  expect(mended.findings).toEqual([own]);
  expect(findingsToMend(mended)).toEqual([]);
});

test('another plan of the same drawing keeps the repairs of the findings that it shares', () => {
  const mended = withRepairs(study, finding, [REPAIR]);
  const again: Finding = { ...finding };
  const other: Finding = { ...finding, message: ['Something else'] };
  const kept = keepingRepairs([again, other], mended);
  expect(kept.findings[0]!.repairs).toEqual([REPAIR]);
  expect(kept.findings[1]).toBe(other);
  expect(findingsToMend({ ...study, ...kept })).toEqual([other]);
});

test('of very many findings, the first have their repairs looked for, and the others offer their own', () => {
  const many = Array.from({ length: 40 }, (_, i): Finding => ({ ...finding, message: [`Finding ${i}`] }));
  const crowded = { ...study, findings: many };
  const wanted = findingsToMend(crowded);
  expect(wanted).toEqual(many.slice(0, wanted.length));
  expect(wanted.length).toBeLessThan(many.length);
  expect(repairsAreSought(crowded, many.at(-1)!)).toBe(true);
  expect(repairsAreSought(crowded, many[0]!)).toBe(false);
});
