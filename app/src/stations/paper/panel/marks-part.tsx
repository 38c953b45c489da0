import { ALLOWANCE_RANGE, formatLength } from '@seamwright/geometry';
import { alikeSections } from '@seamwright/pages';
import { useMemo } from 'react';
import { fabricsOf } from '../../../store/fabrics.ts';
import { setting, useSettings } from '../../../store/settings.ts';
import { useWork } from '../../../store/work.ts';
import { CheckBox } from '../../../ui/check-box.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { listed } from '../../../ui/plural.ts';

const INKS = [
  { value: 'dark', label: 'Full' },
  { value: 'light', label: 'Light' },
] as const;

/** What stands on each foundation. */
export function MarksPart() {
  const { allowance, ink, seamLengths, fabricsOnPaper, cutSizesOnPaper } = useSettings();
  const unit = useWork((work) => work.history.present.unit);
  const some = useWork((work) => fabricsOf(work).length > 0);
  return (
    <Foldable id="paper marks" title="On the foundations" more={`${formatLength(allowance, unit)} allowance`}>
      <LengthField
        label="Seam allowance"
        value={allowance}
        range={ALLOWANCE_RANGE}
        hint="The same at every size; 0 for none."
        onChange={(inches) => setting({ allowance: inches })}
      />
      <Choice label="Ink" value={ink} options={INKS} onChange={(chosen) => setting({ ink: chosen })} />
      {ink === 'light' && <p>For sheets that are sewn in or washed away, and for translucent ones.</p>}
      {some && (
        <CheckBox
          label="Name the fabric of each patch"
          hint="As at Cloth, in the colourway in hand; with an arrow where the print has an up."
          checked={fabricsOnPaper}
          onChange={(checked) => setting({ fabricsOnPaper: checked })}
        />
      )}
      <CheckBox
        label="What to cut for each patch"
        hint="The size at Cloth, with its allowance and spare."
        checked={cutSizesOnPaper}
        onChange={(checked) => setting({ cutSizesOnPaper: checked })}
      />
      <CheckBox
        label="Lengths beside seam lines"
        checked={seamLengths}
        onChange={(checked) => setting({ seamLengths: checked })}
      />
    </Foldable>
  );
}

/** Whether sections that are alike share a foundation; not asked where none are. */
export function Sharing() {
  const plan = useWork((work) => work.study?.plan ?? null);
  const share = useSettings((settings) => settings.shareTemplates);
  const alike = useMemo(() => (plan === null ? [] : alikeSections(plan)), [plan]);
  if (alike.length === 0) return null;
  return (
    <CheckBox
      label="One foundation for sections that are alike"
      hint={`The same when turned: ${alike.map(listed).join('; ')}.`}
      checked={share}
      onChange={(checked) => setting({ shareTemplates: checked })}
    />
  );
}
