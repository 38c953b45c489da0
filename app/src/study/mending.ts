import { type Finding, plainWords, type Repair } from '@seamwright/arrangement';
import type { Study } from './study.ts';

/** So many findings have their repairs looked for; with more, there is one reason for all, and mending some shows it. */
const MOST_MENDED = 24;

/** The findings whose repairs have not been looked for yet, in their order. */
export const findingsToMend = ({ findings, mended }: Study): readonly Finding[] =>
  findings.slice(0, MOST_MENDED).filter((finding) => !mended.has(finding));

/** Whether the repairs of a finding are those that there are: they have been looked for, or will not be. */
export const repairsAreSought = ({ findings, mended }: Study, finding: Finding): boolean =>
  mended.has(finding) || findings.indexOf(finding) >= MOST_MENDED;

/** The study with the repairs of one of its findings; where none were found, its own stay. */
export function withRepairs(study: Study, finding: Finding, repairs: readonly Repair[]): Study {
  const found = repairs.length === 0 ? finding : { ...finding, repairs };
  return {
    ...study,
    findings: study.findings.map((one) => (one === finding ? found : one)),
    mended: new Set([...study.mended, found]),
  };
}

/** The findings of another plan of the same drawing, with the repairs that are known already. */
export function keepingRepairs(
  findings: readonly Finding[],
  before: Pick<Study, 'findings' | 'mended'>,
): Pick<Study, 'findings' | 'mended'> {
  const mended = new Set<Finding>();
  const kept = findings.map((finding) => {
    const known = before.findings.find((one) => before.mended.has(one) && sameFinding(one, finding));
    if (known === undefined) return finding;
    mended.add(known);
    return known;
  });
  return { findings: kept, mended };
}

const sameFinding = (a: Finding, b: Finding): boolean =>
  a.kind === b.kind && plainWords(a.message) === plainWords(b.message) && a.at.length === b.at.length;
