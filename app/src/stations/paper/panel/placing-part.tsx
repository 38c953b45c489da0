import { formatLength } from '@seamwright/geometry';
import { GAP_RANGE, OVERLAP_RANGE } from '@seamwright/pages';
import { setting, useSettings } from '../../../store/settings.ts';
import { useWork } from '../../../store/work.ts';
import { CheckBox } from '../../../ui/check-box.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { LengthField } from '../../../ui/length-field.tsx';

/** How foundations are placed on the sheets. */
export function PlacingPart() {
  const { fillSheets, gap, keepUpright, overlap, saveSheets } = useSettings();
  const unit = useWork((work) => work.history.present.unit);
  return (
    <Foldable id="paper placing" title="On the sheets" more={`${formatLength(gap, unit)} apart`}>
      <LengthField
        label="Room between foundations"
        value={gap}
        range={GAP_RANGE}
        hint="For scissors."
        onChange={(inches) => setting({ gap: inches })}
      />
      <CheckBox
        label="Keep foundations upright"
        hint="None is turned, so that all lie along the grain of what they are printed on."
        checked={keepUpright}
        onChange={(checked) => setting({ keepUpright: checked })}
      />
      <CheckBox
        label="Several prints on a sheet"
        hint="Where a foundation is printed more than once, sheets are filled with it, and fewer are printed."
        checked={fillSheets}
        onChange={(checked) => setting({ fillSheets: checked })}
      />
      <CheckBox
        label="Look longer for fewer sheets"
        hint="May save a sheet in twenty; takes up to half a minute where there are many."
        checked={saveSheets}
        onChange={(checked) => setting({ saveSheets: checked })}
      />
      <LengthField
        label="Overlap of large foundations"
        value={overlap}
        range={OVERLAP_RANGE}
        hint="Neighbouring parts of one that is larger than the sheet both have this strip, so that they can be laid over each other and taped."
        onChange={(inches) => setting({ overlap: inches })}
      />
    </Foldable>
  );
}
