import { ImagePlus } from 'lucide-react';
import { useState } from 'react';
import { matchedByLightness } from '../../colour/match-palette.ts';
import { PALETTES, type Palette } from '../../colour/palettes.ts';
import { addFabrics, recolourFabrics } from '../../store/fabric-details.ts';
import { fabricsOf } from '../../store/fabrics.ts';
import { useWork } from '../../store/work.ts';
import { Button } from '../../ui/button.tsx';
import { Dialog } from '../../ui/dialog.tsx';
import { PictureChoice } from '../../ui/picture-choice.tsx';
import styles from './palettes.module.css';

interface PalettesDialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
}

/** Palettes for the pattern's fabrics: ours, and those drawn from the maker's pictures. */
export function PalettesDialog({ open, onClose }: PalettesDialogProps) {
  const [drawn, setDrawn] = useState<readonly Palette[]>([]);
  const [chosen, setChosen] = useState(PALETTES[0]!);
  const [problem, setProblem] = useState<string | null>(null);
  const drawFromPicture = async () => {
    const { choosePalette } = await import('./picture-palette.ts');
    choosePalette((found) => {
      if (typeof found === 'string') return setProblem(found);
      setProblem(null);
      setDrawn((before) => [...before.filter(({ name }) => name !== found.name), found]);
      setChosen(found);
    });
  };
  const fabrics = useWork(fabricsOf);
  // A photo shows what the fabric is: no palette makes another of it.
  const plain = fabrics.filter(({ swatch }) => swatch === undefined);
  const give = () => {
    const matched = matchedByLightness(
      plain.map(({ colour }) => colour),
      chosen.colours,
    );
    recolourFabrics(chosen.name, new Map(plain.map(({ id }, i) => [id, matched[i]!])));
    onClose();
  };
  const add = () => {
    addFabrics(chosen.name, chosen.colours);
    onClose();
  };
  return (
    <Dialog
      title="Palettes"
      open={open}
      onClose={onClose}
      actions={
        <>
          <Button onClick={add}>Add as new fabrics</Button>
          <Button look="main" disabled={plain.length === 0} onClick={give}>
            Give the fabrics its colours
          </Button>
        </>
      }
    >
      <div className={styles.palettes}>
        <PictureChoice
          label="Palette"
          className={styles.list}
          options={[...PALETTES, ...drawn]}
          value={chosen}
          onChange={setChosen}
          picture={({ colours }) => (
            <span className={styles.strip}>
              {colours.map(({ colour }) => (
                <span key={colour} style={{ background: colour }} />
              ))}
            </span>
          )}
        />
        <Button icon={ImagePlus} onClick={() => void drawFromPicture()}>
          Draw one from a picture…
        </Button>
        {problem !== null && <p role="alert">{problem}</p>}
        <p className={styles.hint}>
          {chosen.name}: {chosen.colours.map(({ name }) => name).join(', ')}. Given to the fabrics, the
          lightest colour takes the place of the lightest fabric, and so on to the darkest.
          {plain.length < fabrics.length && ' Fabrics with a photo stay as they are.'}
        </p>
      </div>
    </Dialog>
  );
}
