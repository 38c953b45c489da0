import { FileDown } from 'lucide-react';
import { useState } from 'react';
import { useCutting } from '../../../study/cut-out.ts';
import { sheetWanted } from '../../../study/foundation-job.ts';
import { Button } from '../../../ui/button.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { useOutput } from '../../paper/outputs/under-way.ts';
import styles from './cutting.module.css';
import { saveTemplates } from './save-template.ts';
import type { InspectedPiece } from './use-inspected-piece.ts';

/** Templates and windows for the patch that is looked at, or for all of its section. */
export function TemplatesPart({ inspected: { block, need } }: { readonly inspected: InspectedPiece }) {
  const [of, setOf] = useState<'patch' | 'section'>('patch');
  const busy = useOutput(({ underWay }) => underWay !== null);
  const off = useCutting((cutting) => cutting.isDue) || busy;
  const printer = sheetWanted().printer?.name;
  const section = block.plan.sections.find(({ order }) => order.includes(need.patch))!;
  const isWhole = of === 'section' && section.order.length > 1;
  const wanted = isWhole
    ? { block, patches: section.order, name: `section ${section.letter}` }
    : { block, patches: [need.patch], name: need.name };
  const one = isWhole ? 's' : '';
  return (
    <>
      {section.order.length > 1 && (
        <Choice
          label="Templates for fussy cutting"
          value={of}
          options={[
            { value: 'patch', label: `Of ${need.name}` },
            { value: 'section', label: `Of all ${section.order.length} of section ${section.letter}` },
          ]}
          onChange={setOf}
        />
      )}
      <div className={styles.row}>
        <Button icon={FileDown} waits={off} onClick={() => void saveTemplates(wanted, 'template')}>
          Template{one} as PDF
        </Button>
        <Button icon={FileDown} waits={off} onClick={() => void saveTemplates(wanted, 'window')}>
          Window{one} as PDF
        </Button>
      </div>
      <p className={styles.note}>
        To lay on the fabric’s right side, or to look through.
        {printer !== undefined && ` Corrected for ${printer}, as chosen at Paper.`}
      </p>
    </>
  );
}
