import { chooseFile } from '../keeping/choose-file.ts';
import { savePattern } from '../keeping/files.ts';
import { STATIONS } from '../stations/stations.ts';
import { redo, showIn, undo } from '../store/changes.ts';
import { goTo, stepBlock } from '../store/places.ts';
import { pattern, useWork } from '../store/work.ts';
import { useShortcuts } from '../ui/shortcuts.ts';

/** The keys that do the same on every station. */
export function useGlobalKeys(help: () => void): void {
  const several = () => pattern(useWork.getState()).blocks.length > 1;
  useShortcuts('Everywhere', [
    { keys: 'Mod+z', does: 'Undo', run: undo, inFields: 'settled' },
    { keys: 'Mod+Shift+z', does: 'Redo', run: redo, inFields: 'settled' },
    { keys: 'Mod+y', does: 'Redo', run: redo, inFields: 'settled' },
    { keys: 'Mod+s', does: 'Save a pattern file', run: savePattern, inFields: true },
    { keys: 'Mod+o', does: 'Open a pattern file or an SVG drawing', run: chooseFile, inFields: true },
    ...STATIONS.map((station, index) => ({
      keys: String(index + 1),
      does: `Go to ${station.name}`,
      run: () => goTo(station.id),
    })),
    { keys: ']', does: 'Next block', run: () => stepBlock(1), when: several },
    { keys: '[', does: 'Previous block', run: () => stepBlock(-1), when: several },
    { keys: 'u', does: 'Inches or centimetres', run: switchUnit },
    { keys: '?', does: 'This list', run: help },
  ]);
}

function switchUnit(): void {
  showIn(pattern(useWork.getState()).unit === 'in' ? 'cm' : 'in');
}
