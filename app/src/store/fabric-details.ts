import type { Fabric, Pattern } from '@seamwright/pattern';
import { changePattern } from './changes.ts';
import { changeFabric } from './fabrics.ts';
import { announce } from './notices.ts';

/** What is done with fabrics where they are chosen; apart from `fabrics.ts`, which a first visit loads. */

const fabricsIn = ({ fabrics = [] }: Pattern): readonly Fabric[] => fabrics;

/** Several fabrics at once, in one step. */
export function addFabrics(from: string, added: readonly Pick<Fabric, 'name' | 'colour'>[]): void {
  const fabrics = added.map(({ name, colour }) => ({ id: `f-${crypto.randomUUID()}`, name, colour }));
  changePattern(`Add fabrics of “${from}”`, (before) => ({
    ...before,
    fabrics: [...fabricsIn(before), ...fabrics],
  }));
  announce(`${fabrics.length} fabrics added`);
}

/** Other names and colours for fabrics, by their ids, in one step. */
export function recolourFabrics(
  from: string,
  instead: ReadonlyMap<string, Pick<Fabric, 'name' | 'colour'>>,
): void {
  changePattern(`Colours of “${from}”`, (before) => ({
    ...before,
    fabrics: fabricsIn(before).map((fabric) => {
      const other = instead.get(fabric.id);
      return other === undefined ? fabric : { ...fabric, name: other.name, colour: other.colour };
    }),
  }));
  announce(`The fabrics have the colours of “${from}”`);
}

/** What else is known of a fabric. Null takes it away. */
interface FabricDetails {
  readonly colour?: string;
  /** Inches. */
  readonly width?: number | null;
  readonly grain?: NonNullable<Fabric['grain']> | null;
  readonly swatch?: NonNullable<Fabric['swatch']> | null;
}

export function describeFabric(label: string, id: string, details: FabricDetails): void {
  changeFabric(label, id, (before) => {
    const { width: _, grain: __, swatch: ___, ...fabric } = before;
    const {
      width = before.width ?? null,
      grain = before.grain ?? null,
      swatch = before.swatch ?? null,
    } = details;
    return {
      ...fabric,
      ...(details.colour !== undefined && { colour: details.colour }),
      ...(width !== null && { width }),
      ...(grain !== null && { grain }),
      ...(swatch !== null && { swatch }),
    };
  });
}
