import type { Sketch } from './sketch.ts';

/** A plain block: the reading room's window, four panes. 6 × 6 in. */
export const WINDOW_PANES: Sketch = {
  id: 'window-panes',
  name: 'Window panes',
  points: {
    nw: [0, 0],
    ne: [6, 0],
    se: [6, 6],
    sw: [0, 6],
    north: [3, 0, 'edge:nw'],
    east: [6, 3, 'edge:ne'],
    south: [3, 6, 'edge:se'],
    west: [0, 3, 'edge:sw'],
  },
  outline: ['nw', 'ne', 'se', 'sw'],
  splits: {
    upright: ['north', 'south'],
    crossbar: ['west', 'east'],
  },
  notes: [
    ['dusk', 1, 1],
    ['lamplight', 5, 1],
    ['lamplight', 1, 5],
    ['dusk', 5, 5],
  ],
};
