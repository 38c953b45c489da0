import type { Region } from './region.ts';

/** How a region is put together: sewn on one foundation, or of two units joined along one line. */
export type Assembly =
  | { readonly kind: 'section'; readonly patches: Region; readonly foundations: 1 }
  | {
      readonly kind: 'join';
      readonly line: number;
      readonly units: readonly [Assembly, Assembly];
      readonly foundations: number;
    }
  | {
      /** No foundation holds it and no straight cut divides it: proof that it cannot be sewn with straight seams. */
      readonly kind: 'stuck';
      readonly patches: Region;
      readonly foundations: number;
    };

export const sectionOf = (patches: Region): Assembly => ({ kind: 'section', patches, foundations: 1 });

export const joinOf = (line: number, units: readonly [Assembly, Assembly]): Assembly => ({
  kind: 'join',
  line,
  units,
  foundations: units[0].foundations + units[1].foundations,
});

export const stuckAt = (patches: Region): Assembly => ({
  kind: 'stuck',
  patches,
  foundations: patches.length,
});

export const isSewable = (assembly: Assembly): boolean =>
  assembly.kind === 'section' || (assembly.kind === 'join' && assembly.units.every(isSewable));

type Leaf = Exclude<Assembly, { kind: 'join' }>;

/** All sections of an assembly, and the stuck parts, from left to right. */
export function leavesOf(assembly: Assembly): readonly Leaf[] {
  const leaves: Leaf[] = [];
  const gather = (part: Assembly): void => {
    if (part.kind === 'join') part.units.forEach(gather);
    else leaves.push(part);
  };
  gather(assembly);
  return leaves;
}
