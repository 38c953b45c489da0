import type { PinRecord } from '@seamwright/pattern';
import type { Study } from '../../study/study.ts';
import { patchLabel, patchOf } from './patch-label.ts';

/** What a pin does, in a sentence: `A3 is sewn before A5, where both are in one section.` */
export function pinWords(pin: PinRecord, study: Study): string {
  const name = (id: string) => nameOf(id, study);
  switch (pin.kind) {
    case 'first':
      return `${name(pin.patch)} is the first patch of its section.`;
    case 'before':
      return `${name(pin.patch)} comes before ${name(pin.than)}, where both are in one section.`;
    case 'together':
      return `${name(pin.patches[0])} and ${name(pin.patches[1])} stay in one section.`;
    case 'apart':
      return `A new section starts at the seam between ${name(pin.patches[0])} and ${name(pin.patches[1])}.`;
    case 'letter':
      return `The section of ${name(pin.patch)} is called ${pin.letter}.`;
  }
}

/** The sentence of a pin as a label of an undoable step, without its full stop. */
export const pinStep = (pin: PinRecord, study: Study): string => pinWords(pin, study).replace(/\.$/, '');

/** What is left of a pin whose patch is gone: `A3 before a patch that is gone.` */
export function lostWords(pin: PinRecord, study: Study): string {
  const name = (id: string) => nameOf(id, study);
  switch (pin.kind) {
    case 'first':
      return 'First of its section: a patch that is gone.';
    case 'before':
      return patchOf(study, pin.patch) < 0
        ? `A patch that is gone before ${name(pin.than)}.`
        : `${name(pin.patch)} before a patch that is gone.`;
    case 'together':
    case 'apart': {
      const here = pin.patches.find((id) => patchOf(study, id) >= 0);
      const which =
        here === undefined ? 'Two patches that are gone' : `${name(here)} and a patch that is gone`;
      return pin.kind === 'together' ? `${which} in one section.` : `A new section between: ${which}.`;
    }
    case 'letter':
      return `Letter ${pin.letter}: a patch that is gone.`;
  }
}

function nameOf(id: string, study: Study): string {
  const patch = patchOf(study, id);
  return patch < 0 ? 'a patch that is gone' : patchLabel(study, patch);
}
