import type { KeyboardEvent } from 'react';

const OTHER_WAY: Readonly<Record<string, string>> = { ArrowLeft: 'ArrowRight', ArrowRight: 'ArrowLeft' };

/** The key as the block has it when it is seen from its printed side: arrows go where they point on the screen. */
export function mirroredKey(event: KeyboardEvent): KeyboardEvent {
  const key = OTHER_WAY[event.key];
  return key === undefined ? event : Object.create(event, { key: { value: key } });
}
