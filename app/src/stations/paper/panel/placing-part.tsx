import { formatLength } from '@seamwright/geometry';
import { OVERLAP_RANGE } from '@seamwright/pages';
import { setting, useSettings } from '../../../store/settings.ts';
import { useWork } from '../../../store/work.ts';
import { Foldable } from '../../../ui/foldable.tsx';
import { LengthField } from '../../../ui/length-field.tsx';

/** How foundations are placed on the sheets. */
export function PlacingPart() {
  const { overlap } = useSettings();
  const unit = useWork((work) => work.history.present.unit);
  return (
    <Foldable id="paper placing" title="On the sheets" more={`${formatLength(overlap, unit)} overlap`}>
      <LengthField
        label="Overlap of large foundations"
        value={overlap}
        range={OVERLAP_RANGE}
        hint="By so much the parts of one that is larger than the sheet show the same."
        onChange={(inches) => setting({ overlap: inches })}
      />
    </Foldable>
  );
}
