import {
  movePicture,
  PICTURE_WIDTH_RANGE,
  pictureBox,
  type Tracing,
  turnPicture,
  widenPicture,
} from '@seamwright/pattern';
import { currentBlock, useWork } from '../../../store/work.ts';
import { AngleField } from '../../../ui/angle-field.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { originOf } from '../../../ui/measures.ts';
import panel from '../panel/panel.module.css';
import { PlaceField } from '../panel/place-field.tsx';
import { changeTracing } from './tracing-edits.ts';

/** Where the picture lies, in numbers: the left and top of the rectangle round it, its own width, its angle. */
export function TracingFields({ tracing }: { readonly tracing: Tracing }) {
  const drawing = useWork((work) => currentBlock(work).drawing);
  const origin = originOf(drawing);
  const { picture } = tracing;
  const box = pictureBox(tracing, picture);
  const move = (dx: number, dy: number) =>
    changeTracing('Move the picture', (before) => movePicture(before, dx, dy));
  return (
    <>
      <div className={panel.pair}>
        <PlaceField
          label="From the left"
          value={box.minX - origin.x}
          onChange={(left) => move(left + origin.x - box.minX, 0)}
        />
        <PlaceField
          label="From the top"
          value={box.minY - origin.y}
          onChange={(top) => move(0, top + origin.y - box.minY)}
        />
      </div>
      <div className={panel.pair}>
        <LengthField
          label="Width of the picture"
          value={tracing.width}
          range={PICTURE_WIDTH_RANGE}
          onChange={(width) =>
            changeTracing('Scale the picture', (before) => widenPicture(before, picture, width))
          }
        />
        <AngleField
          label="Turned by"
          value={tracing.turn}
          onChange={(turn) => changeTracing('Turn the picture', (before) => turnPicture(before, turn))}
        />
      </div>
    </>
  );
}
