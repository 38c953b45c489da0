import { LAYERS } from '@seamwright/cloth';
import { ALLOWANCE_RANGE, type LengthRange } from '@seamwright/geometry';
import { FABRIC_WIDTH_RANGE } from '@seamwright/pattern';
import { cutAs, useCuttingHabits } from '../../../store/cutting-habits.ts';
import { setting, useSettings } from '../../../store/settings.ts';
import { useWork } from '../../../store/work.ts';
import { AngleField } from '../../../ui/angle-field.tsx';
import { CheckBox } from '../../../ui/check-box.tsx';
import { CountField } from '../../../ui/count-field.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { ShareField } from '../../../ui/share-field.tsx';
import styles from './cutting.module.css';

/** Sizes are not rounded up to more than a ruler's inch. */
const STEP_RANGE: LengthRange = { least: 1 / 16, most: 1 };

const SWITCHES = [
  { name: 'bySection', words: 'Chart each section on its own' },
  { name: 'trim', words: 'Cut pieces from higher strips, too, and trim them: less fabric, more cuts' },
  { name: 'spareOfLargest', words: 'One more of the largest size of each fabric' },
  { name: 'quarterYards', words: 'Buy whole quarters of a yard' },
  { name: 'moreOnTheLine', words: 'Buy ⅛ yd or 10 cm more where nothing would be over' },
] as const;

/** How the maker cuts and buys: kept for every pattern. */
export function HabitsPart() {
  const habits = useCuttingHabits();
  const unit = useWork((work) => work.history.present.unit);
  const allowance = useSettings((settings) => settings.allowance);
  return (
    <div className={styles.habits}>
      <LengthField
        label="Seam allowance"
        value={allowance}
        range={ALLOWANCE_RANGE}
        onChange={(inches) => setting({ allowance: inches })}
      />
      <LengthField
        label="Spare"
        value={habits.spare}
        range={ALLOWANCE_RANGE}
        hint="How far off a piece may be laid, and still cover."
        onChange={(spare) => cutAs({ spare })}
      />
      <AngleField
        label="Turn"
        value={habits.turn}
        hint="By how much it may be turned at the same time."
        onChange={(turn) => (turn < 0 || turn > 45 ? 'Type an angle from 0° to 45°.' : cutAs({ turn }))}
      />
      <LengthField
        label="Round sizes up to"
        value={habits.roundUpTo[unit]}
        range={STEP_RANGE}
        onChange={(step) => cutAs({ roundUpTo: { ...habits.roundUpTo, [unit]: step } })}
      />
      <LengthField
        label="Usable width of fabric"
        value={habits.usableWidth}
        range={FABRIC_WIDTH_RANGE}
        onChange={(usableWidth) => cutAs({ usableWidth })}
      />
      <CountField
        label="Layers cut at once"
        value={habits.layers}
        least={LAYERS.least}
        most={LAYERS.most}
        onChange={(layers) => cutAs({ layers })}
      />
      <ShareField
        label="Shrinkage in the wash"
        value={habits.shrinkage}
        least={0}
        most={0.3}
        onChange={(shrinkage) => cutAs({ shrinkage })}
      />
      <ShareField
        label="Bought for slips"
        value={habits.safety}
        least={0}
        most={0.5}
        onChange={(safety) => cutAs({ safety })}
      />
      {SWITCHES.map(({ name, words }) => (
        <CheckBox
          key={name}
          label={words}
          checked={habits[name]}
          onChange={(isChecked) => cutAs({ [name]: isChecked })}
        />
      ))}
    </div>
  );
}
