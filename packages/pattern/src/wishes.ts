import { type PatchRecord, type PinOn, patchesOfPin } from '@seamwright/arrangement';

/** Something that the maker wants of the sewing, with patches by the ids of their records. */
export type PinRecord = PinOn<string>;

/** How the maker wants a block to be sewn. */
export interface SewingWishes {
  readonly pins: readonly PinRecord[];
  /** Which of the alternatives is chosen. */
  readonly choice: 'fewest foundations' | 'most repetition' | 'small sections';
  /** For `small sections`: no section has more patches than this. */
  readonly mostPatches: number;
  /** Whether joins may be sewn half-way and finished later, where straight seams alone do not suffice. */
  readonly partialSeams: boolean;
}

/** What a maker who said nothing wants. */
export const NO_WISHES: SewingWishes = {
  pins: [],
  choice: 'fewest foundations',
  mostPatches: 8,
  partialSeams: false,
};

/**
 * Pins by patch index, and those that are lost because a later edit removed their patch.
 *
 * @param records in the order of the arrangement's patches
 */
export function resolvePins(
  pins: readonly PinRecord[],
  records: readonly PatchRecord[],
): { pins: PinOn<number>[]; lost: PinRecord[] } {
  const indexOf = new Map(records.map(({ id }, index) => [id, index]));
  const lost = pins.filter((pin) => patchesOfPin(pin).some((id) => !indexOf.has(id)));
  const resolved = pins
    .filter((pin) => !lost.includes(pin))
    .map((pin) => indexed(pin, (id) => indexOf.get(id)!));
  return { pins: resolved, lost };
}

function indexed(pin: PinRecord, at: (id: string) => number): PinOn<number> {
  switch (pin.kind) {
    case 'first':
      return { kind: pin.kind, patch: at(pin.patch) };
    case 'before':
      return { kind: pin.kind, patch: at(pin.patch), than: at(pin.than) };
    case 'together':
    case 'apart':
      return { kind: pin.kind, patches: [at(pin.patches[0]), at(pin.patches[1])] };
    case 'letter':
      return { kind: pin.kind, patch: at(pin.patch), letter: pin.letter };
  }
}
