import { Button } from '../../../ui/button.tsx';
import station from '../draft-station.module.css';
import { stopPlacing, usePlacing } from './placing.ts';
import { placingWords } from './placing-words.ts';

/** Over the canvas's foot while the picture is in hand: what the next press does, and the way out of it. */
export function PlacingStrip() {
  const { kind, points } = usePlacing();
  if (kind === 'rest') return null;
  return (
    <div className={station.next} data-problem={false}>
      <span>{placingWords(kind, points.length)}</span>
      {points.length > 0 && kind === 'pointing' && (
        <Button
          look="quiet"
          onClick={() => usePlacing.setState({ points: points.slice(0, -1), preview: null })}
        >
          Take it back
        </Button>
      )}
      <Button look="quiet" onClick={stopPlacing}>
        Done
      </Button>
    </div>
  );
}
