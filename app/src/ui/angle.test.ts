import { describe, expect, it } from 'vitest';
import { angleWords, parseAngle } from './angle.ts';

describe('parseAngle', () => {
  it('takes degrees as people type them', () => {
    for (const [typed, degrees] of [
      ['45', 45],
      ['22.5', 22.5],
      ['22,5°', 22.5],
      [' -30 ', -30],
      ['−30 deg', -30],
      ['67 1/2', 67.5],
      ['67½', 67.5],
      ['½', 0.5],
      ['0', 0],
      ['360', 360],
    ] as const)
      expect(parseAngle(typed), typed).toEqual({ ok: true, value: degrees });
  });

  it('says of the rest what to type', () => {
    for (const typed of ['', 'steep', '4 5', '1/0', '°', '-', '1e3', '3/', '45 in'])
      expect(parseAngle(typed), typed).toMatchObject({ ok: false });
    const far = parseAngle('361');
    expect(far.ok ? '' : far.problem.what).toBe('361 is more than a full turn');
  });
});

describe('angleWords', () => {
  it('reads to a tenth, and says where that is not all', () => {
    expect(angleWords(45)).toBe('45°');
    expect(angleWords(22.5 + 1e-12)).toBe('22.5°');
    expect(angleWords(33.690067)).toBe('about 33.7°');
  });
});
