import type { Pattern } from '../pattern.ts';
import { PLAIN_FABRICS } from '../plain-fabrics.ts';
import { LANTERN } from './lantern.ts';
import { LIGHTHOUSE } from './lighthouse.ts';
import { PAPER_BOAT } from './paper-boat.ts';
import { READING_LAMP } from './reading-lamp.ts';
import { blockOf } from './sketch.ts';
import { WINDOW_PANES } from './window-panes.ts';

/** What a first visit opens: blocks for a quilt in a harbour town's reading room. The same on every call. */
export const demoPattern = (): Pattern => ({
  format: 'seamwright-pattern/1',
  title: 'Harbour Reading Room',
  unit: 'in',
  fabrics: PLAIN_FABRICS,
  blocks: [PAPER_BOAT, LANTERN, LIGHTHOUSE, READING_LAMP, WINDOW_PANES].map(blockOf),
});
