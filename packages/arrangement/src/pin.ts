/**
 * Something that the maker wants of the sewing of some patches. `Patch` is how they are named: by the ids of their
 * records in the document, so that it holds while lines move; by index where a plan is made.
 *
 * - `first`: the patch is the first of its section
 * - `before`: where both are in one section, `patch` is sewn before `than`
 * - `together`: both are in one section
 * - `apart`: a new section starts along the seam between these two neighbours
 * - `letter`: the section that holds the patch is called by this letter
 */
export type PinOn<Patch> =
  | { readonly kind: 'first'; readonly patch: Patch }
  | { readonly kind: 'before'; readonly patch: Patch; readonly than: Patch }
  | { readonly kind: 'together'; readonly patches: readonly [Patch, Patch] }
  | { readonly kind: 'apart'; readonly patches: readonly [Patch, Patch] }
  | { readonly kind: 'letter'; readonly patch: Patch; readonly letter: string };

/** The patches that a pin is about. */
export function patchesOfPin<Patch>(pin: PinOn<Patch>): readonly Patch[] {
  if (pin.kind === 'together' || pin.kind === 'apart') return pin.patches;
  return pin.kind === 'before' ? [pin.patch, pin.than] : [pin.patch];
}
