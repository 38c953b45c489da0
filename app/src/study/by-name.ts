import type { Patch } from '@seamwright/arrangement';
import type { Study } from './study.ts';

/** As names follow each other: A1, A2 … A10, B1 … Z9, AA1; what has no name comes last. */
export function compareNames(a: string, b: string): number {
  const [first, second] = [a, b].map((name) => /^([A-Z]*)(\d*)/.exec(name)!) as [
    RegExpExecArray,
    RegExpExecArray,
  ];
  const [letters, others] = [first[1]!, second[1]!];
  if (letters === '' || others === '') return Number(letters === '') - Number(others === '');
  if (letters !== others) return letters.length - others.length || (letters < others ? -1 : 1);
  return Number(first[2]) - Number(second[2]);
}

/** The patches in the order of their names. */
export const patchesByName = ({ arrangement, names }: Study): readonly Patch[] =>
  [...(arrangement?.patches ?? [])].sort((a, b) => compareNames(names[a.index]!, names[b.index]!));
