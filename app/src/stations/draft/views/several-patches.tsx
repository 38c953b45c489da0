import { selectNothing } from '../../../store/selection.ts';
import { useWork } from '../../../store/work.ts';
import { compareNames } from '../../../study/by-name.ts';
import { Button } from '../../../ui/button.tsx';
import { listed } from '../../../ui/plural.ts';
import panel from '../panel/panel.module.css';
import { FabricChoice } from './fabric-choice.tsx';

/** Several patches in hand: which, and what all of them are cut from. */
export function SeveralPatches({ ids }: { readonly ids: readonly string[] }) {
  const study = useWork((work) => work.study);
  const names = ids.map((id) => study?.names[study.records.findIndex((record) => record.id === id)] ?? '?');
  return (
    <div className={panel.part}>
      <h2>{ids.length} patches</h2>
      <p className={panel.hint}>{listed(names.sort(compareNames))}</p>
      <FabricChoice />
      <div className={panel.row}>
        <Button onClick={selectNothing}>Let go of them</Button>
      </div>
    </div>
  );
}
