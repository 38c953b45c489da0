import { useEffect, useRef } from 'react';
import { BlockCanvas } from '../../canvas/block-canvas.tsx';
import { useSize } from '../../canvas/use-size.ts';
import { FindingList } from '../../shell/finding-list.tsx';
import { NOTHING, useWork } from '../../store/work.ts';
import { useShortcuts } from '../../ui/shortcuts.ts';
import frame from '../frame.module.css';
import { drawByKey } from './canvas-keys.ts';
import { drawByPointer } from './canvas-pointer.ts';
import { CANVAS_PLACE } from './crosshair.ts';
import styles from './draft-station.module.css';
import { deleteChosen, restHand, useHand } from './hand.ts';
import { LinesLayer, PatchesLayer, PointerLayer } from './layers/canvas-layers.tsx';
import { NextWords } from './next-words.tsx';
import { CatchPanel } from './panel/catch-panel.tsx';
import { GridPanel } from './panel/grid-panel.tsx';
import { InHand } from './panel/in-hand.tsx';
import { PartsList } from './panel/parts-list.tsx';
import { RepeatPanel } from './panel/repeat-panel.tsx';
import { SizePanel } from './panel/size-panel.tsx';
import { Welcome } from './panel/welcome.tsx';
import { RepeatNote } from './repeat-note.tsx';
import { ToolChoice } from './tool-choice.tsx';
import { TOOLS } from './tools.ts';
import { placeByKey } from './tracing/place-by-key.ts';
import { placeByPointer } from './tracing/place-by-pointer.ts';
import { usePlacing } from './tracing/placing.ts';
import { PlacingStrip } from './tracing/placing-strip.tsx';
import { PLACING_KEYS } from './tracing/placing-words.ts';
import { TracingPanel } from './tracing/tracing-panel.tsx';
import { useFraming } from './use-framing.ts';
import { boxOfCopies } from './views/copies.ts';
import { useDraftView } from './views/draft-view.ts';
import { mirroredKey } from './views/mirrored-key.ts';
import { ViewChoice } from './views/view-choice.tsx';

const KEYS = 'draft-keys';

/** Where the block is drawn. */
export default function DraftStation() {
  const blockId = useWork((work) => work.blockId);
  // What was begun on one block is not finished on another, nor after coming back from another station.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the block is what the hand must rest for
  useEffect(() => restHand, [blockId]);
  useShortcuts('At the Draft station', [
    {
      keys: 'Delete',
      does: 'Delete what is in hand',
      run: deleteChosen,
      when: () => useWork.getState().selection !== NOTHING,
    },
  ]);
  return (
    <div className={`${frame.station} ${frame.wide} ${styles.station}`}>
      <DraftCanvas />
      <aside className={`${frame.panel} ${frame.parts} ${styles.panel}`} aria-label="About the drawing">
        <div className={styles.of}>
          <Welcome />
          <InHand />
          <Findings />
        </div>
        <div className={`${styles.of} ${styles.rest}`}>
          <SizePanel />
          <RepeatPanel />
          <GridPanel />
          <CatchPanel />
          <TracingPanel />
          <PartsList />
        </div>
      </aside>
    </div>
  );
}

function DraftCanvas() {
  const place = useRef<HTMLDivElement>(null);
  const size = useSize(place);
  const bounds = useFraming();
  const { kind, copies } = useDraftView();
  const mirrored = kind === 'printed';
  const tool = useHand((hand) => hand.held.tool);
  const crosshair = useHand((hand) => hand.crosshair);
  const placing = usePlacing((hand) => hand.kind);
  const pointer = usePlacing((hand) => hand.crosshair);
  const byPointer = placing === 'rest' ? drawByPointer : placeByPointer;
  const byKey = placing === 'rest' ? drawByKey : placeByKey;
  return (
    <div ref={place} id={CANVAS_PLACE} className={frame.canvas}>
      <BlockCanvas
        label="Drawing of the block"
        describedBy={KEYS}
        bounds={boxOfCopies(bounds, copies)}
        mirrored={mirrored}
        margin={64}
        drag="tool"
        cursor={
          placing === 'moving' ? 'move' : tool === 'adjust' && placing === 'rest' ? 'default' : 'crosshair'
        }
        inSight={pointer ?? crosshair}
        onPointer={byPointer}
        onKey={(event) => byKey(mirrored ? mirroredKey(event) : event)}
        testId="draft-canvas"
        overlay={
          <>
            <div className={styles.above}>
              <ToolChoice />
              <RepeatNote />
            </div>
            <ViewChoice />
            <NextWords />
            <PlacingStrip />
          </>
        }
      >
        <PatchesLayer bounds={bounds} />
        <LinesLayer />
        <PointerLayer width={size?.width ?? 0} />
      </BlockCanvas>
      <p id={KEYS} className="heard">
        {placing === 'rest' ? TOOLS[tool].keys : PLACING_KEYS[placing]}
      </p>
    </div>
  );
}

function Findings() {
  const count = useWork((work) => work.study?.findings.length ?? 0);
  if (count === 0) return null;
  return (
    <section className={styles.findings} aria-labelledby="draft-findings">
      <h2 id="draft-findings">Findings</h2>
      <FindingList />
    </section>
  );
}
