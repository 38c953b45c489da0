import { Pencil, Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import {
  addColourway,
  colourwayInHand,
  listedColourways,
  removeColourway,
  renameColourway,
  takeColourway,
} from '../../store/colourways.ts';
import { useWork } from '../../store/work.ts';
import type { Study } from '../../study/study.ts';
import { Button, IconButton } from '../../ui/button.tsx';
import { NameDialog } from '../../ui/name-dialog.tsx';
import { PictureChoice } from '../../ui/picture-choice.tsx';
import styles from './colourways.module.css';
import { FabricStamp } from './fabric-stamp.tsx';

interface ColourwaysPartProps {
  readonly study: Study | null;
  readonly shade: (colour: string) => string;
}

/** The pattern's colourways side by side, the open block in each; the one that is chosen is in hand. */
export function ColourwaysPart({ study, shade }: ColourwaysPartProps) {
  const listed = useWork(listedColourways);
  const inHand = useWork(colourwayInHand);
  const [renaming, setRenaming] = useState(false);
  const keyOf = (id: string) => (id === listed[0]?.id ? null : id);
  return (
    <>
      <h2>Colourways</h2>
      {inHand === undefined ? (
        <p>The pattern has one choice of fabrics. Begin another to compare the two.</p>
      ) : (
        <PictureChoice
          label="Colourway in hand"
          className={styles.pictures}
          options={listed}
          value={inHand}
          onChange={takeColourway}
          picture={({ id }) =>
            study !== null && <FabricStamp study={study} colourway={keyOf(id)} shade={shade} />
          }
        />
      )}
      <div className={styles.row}>
        <Button icon={Plus} onClick={addColourway}>
          {inHand === undefined ? 'Another colourway' : 'One more like it'}
        </Button>
        {inHand !== undefined && (
          <>
            <IconButton label={`Rename ${inHand.name}`} icon={Pencil} onClick={() => setRenaming(true)} />
            <IconButton
              label={`Remove ${inHand.name}`}
              icon={Trash2}
              onClick={() => removeColourway(inHand)}
            />
            <NameDialog
              title="Rename the colourway"
              label="Name"
              name={inHand.name}
              open={renaming}
              onClose={() => setRenaming(false)}
              onName={(name) => renameColourway(inHand.id, name)}
            />
          </>
        )}
      </div>
    </>
  );
}
