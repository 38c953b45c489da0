import { sizeOf } from '@seamwright/drafting';
import { LARGEST_SIZE, SMALLEST_SIZE } from '@seamwright/geometry';
import { type Block, GRID_PARTS } from '@seamwright/pattern';
import { corners } from '../../../canvas/bounds.ts';
import { changeBlock } from '../../../store/changes.ts';
import { useSettings } from '../../../store/settings.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { CheckBox } from '../../../ui/check-box.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { CountField } from '../../../ui/count-field.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { catchKind, keepsToGrid } from '../catching.ts';
import { lookAgain } from '../hand.ts';
import styles from './panel.module.css';

/** Inches from line to line: finer than a size that can be drawn is no help, wider than the largest block is no grid. */
const RANGE = { least: SMALLEST_SIZE / 4, most: LARGEST_SIZE };

/** How many parts come nearest to the grid that there was. */
function partsLike({ drawing, grid }: Block): number {
  const parts = Math.round(sizeOf(corners(drawing)).width / grid);
  return Math.min(Math.max(parts, GRID_PARTS.least), GRID_PARTS.most);
}

/** The drawing grid: how wide, or into how many parts it divides the block, and whether ends keep to it. */
export function GridPanel() {
  const block = useWork(currentBlock);
  const toGrid = useSettings(keepsToGrid);
  const { grid, gridParts } = block;
  const edit = (change: (before: Block) => Block) => {
    changeBlock('Change the grid', block.id, change);
    lookAgain();
  };
  const inParts = (parts: number) => edit((before) => ({ ...before, gridParts: parts }));
  const inLengths = () => edit(({ gridParts: _, ...before }) => before);
  return (
    <section className={styles.part} aria-labelledby="draft-grid">
      <h2 id="draft-grid">Grid</h2>
      <Choice
        bare
        label="How the grid is given"
        value={gridParts === undefined ? 'length' : 'parts'}
        options={[
          { value: 'length', label: 'By length' },
          { value: 'parts', label: 'In parts of the block' },
        ]}
        onChange={(how) => (how === 'parts' ? inParts(partsLike(block)) : inLengths())}
      />
      <div className={styles.pair}>
        {gridParts === undefined ? (
          <LengthField
            label="A line every"
            value={grid}
            range={RANGE}
            onChange={(inches) => edit((before) => ({ ...before, grid: inches }))}
          />
        ) : (
          <CountField
            label="Parts"
            value={gridParts}
            least={GRID_PARTS.least}
            most={GRID_PARTS.most}
            onChange={inParts}
          />
        )}
        <CheckBox
          label="Ends keep to it"
          checked={toGrid}
          onChange={(isChecked) => catchKind('grid', isChecked)}
        />
      </div>
    </section>
  );
}
