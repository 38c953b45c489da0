import { type Box, edgesOf, type Polygon, type Segment } from '@seamwright/geometry';
import type { Mark } from '../marks/model.ts';
import { clearCentres } from './barriers.ts';
import { linesOn, plateOf } from './label-lines.ts';
import { leaderMark } from './leader-mark.ts';
import { type LedLabel, ledLabels } from './leaders.ts';
import {
  CLEAR,
  labelInPatch,
  numberLine,
  type PatchToLabel,
  type PlacedLabel,
  SMALLEST_NUMBER,
} from './patch-labels.ts';
import type { Plate } from './plate.ts';

/** Where a foundation's labels are to stand. Points on the sheet. */
export interface PatchesToLabel {
  readonly patches: readonly PatchToLabel[];
  readonly outline: Polygon<'page'>;
  readonly cuttingLine: Polygon<'page'>;
  readonly sewLines: readonly Segment<'page'>[];
  /** What crosses the allowance. */
  readonly crossings: readonly Segment<'page'>[];
  readonly room: Box<'page'>;
  /** Upright and level lines that no label may cross: where the foundation is cut into sheets. */
  readonly barriers: readonly Segment<'page'>[];
  /** How far beyond the room, all round, labels may stand that find no place in it; points. */
  readonly spare: number;
}

export interface PieceLabels {
  draw(): readonly Mark[];
  readonly plates: readonly Plate[];
  /** Of these the ones that do not lie in their patches. */
  readonly loose: readonly Plate[];
  readonly leaders: readonly Segment<'page'>[];
  /** Names of the patches with a note that does not stand in them. */
  readonly unnoted: readonly string[];
  /** Names of the patches whose fabric's letter does not stand beside the number: with it there was no free place. */
  readonly unlettered: readonly string[];
}

/**
 * Each patch's label, once: inside the patch where it fits; else led out to the nearest free place; only where there is none,
 * at the patch's deepest point over what is there.
 */
export function pieceLabels(section: string, foundation: PatchesToLabel): PieceLabels {
  const first = labelled(section, foundation);
  if (!first.crowded) return first;
  const { small } = first;
  const patches = foundation.patches.map((patch) =>
    small.includes(patch) ? { ...patch, fabric: null } : patch,
  );
  return {
    ...labelled(section, { ...foundation, patches }),
    unlettered: small.filter(({ fabric }) => fabric !== null).map(({ name }) => name),
  };
}

/** One try; the patches that do not hold their labels, and whether there was no free place for one of these. */
function labelled(
  section: string,
  foundation: PatchesToLabel,
): PieceLabels & { readonly small: readonly PatchToLabel[]; readonly crowded: boolean } {
  const { patches, outline, sewLines, crossings, barriers } = foundation;
  const lines = [...sewLines, ...edgesOf(outline), ...crossings];
  const inside = patches.map((patch) => labelInPatch(patch, lines, barriers));
  const small = patches.filter((_, i) => inside[i] === null);
  const led = small.length === 0 ? [] : leadOut(small, inside, foundation);
  const labels = patches.map(
    (patch, i) => inside[i] ?? led[small.indexOf(patch)] ?? overWhatIsThere(patch, barriers),
  );
  const leaders = led.filter((label) => label !== null);
  return {
    // The dots under the numbers, should one come to lie on another.
    draw: () => [
      ...leaders.map(({ line, patch }) => leaderMark(section, line, patch.depth)),
      ...labels.flatMap((label) => linesOn(section, label.lines, label.plate)),
    ],
    plates: labels.map(({ plate }) => plate),
    loose: labels.flatMap(({ plate }, i) => (inside[i] === null ? [plate] : [])),
    leaders: leaders.map(({ line }) => line),
    unnoted: patches.filter((_, i) => !labels[i]!.noted).map(({ name }) => name),
    unlettered: [],
    small,
    crowded: led.includes(null) && small.some(({ fabric }) => fabric !== null),
  };
}

function leadOut(
  small: readonly PatchToLabel[],
  inside: readonly (PlacedLabel | null)[],
  { patches, outline, cuttingLine, sewLines, crossings, barriers, room, spare }: PatchesToLabel,
): readonly (LedLabel | null)[] {
  const lines = [...sewLines, ...edgesOf(outline), ...edgesOf(cuttingLine), ...crossings, ...barriers];
  const labels = inside.flatMap((label) => (label === null ? [] : [label.plate]));
  return ledLabels(small, { outline, cuttingLine, lines, barriers, patches, labels, room, spare });
}

function overWhatIsThere(patch: PatchToLabel, barriers: readonly Segment<'page'>[]): PlacedLabel {
  const number = [numberLine(patch, SMALLEST_NUMBER)];
  const [centre = patch.heart] = clearCentres(plateOf(number, patch.heart, 0), barriers, CLEAR);
  const plate = plateOf(number, centre, 0);
  return { lines: number, plate, noted: patch.note === null };
}
