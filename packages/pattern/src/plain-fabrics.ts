import type { Fabric } from './pattern.ts';

/** Plain fabrics that a new pattern begins with. Their lightnesses are well apart, so that they are told apart in greys. */
export const PLAIN_FABRICS: readonly Fabric[] = [
  { id: 'sailcloth', name: 'Sailcloth', colour: '#f1e8d4' },
  { id: 'lamp-yellow', name: 'Lamp yellow', colour: '#e9b949' },
  { id: 'sea-mist', name: 'Sea mist', colour: '#88a6ad' },
  { id: 'brick', name: 'Brick', colour: '#b5563e' },
  { id: 'harbour-blue', name: 'Harbour blue', colour: '#28547d' },
  { id: 'slate', name: 'Slate', colour: '#2c3138' },
];
