import type { Box, Point } from '@seamwright/geometry';
import Konva from 'konva/lib/Core.js';
import { Maximize, ZoomIn, ZoomOut } from 'lucide-react';
import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { Stage } from 'react-konva/lib/ReactKonvaCore.js';
import { IconButton } from '../ui/button.tsx';
import styles from './block-canvas.module.css';
import type { CanvasPointer } from './pointer.ts';
import { useGestures } from './use-gestures.ts';
import { useSize } from './use-size.ts';
import { type Corner, fitClear, pan, type Size, toScreen, turnedOver, type View, zoomAt } from './view.ts';
import { FlipContext, ScaleContext, ViewContext } from './view-context.ts';

// More than two device pixels per CSS pixel costs time at every draw and shows nothing.
Konva.pixelRatio = Math.min(globalThis.devicePixelRatio ?? 1, 2);

interface BlockCanvasProps {
  /** What screen readers call it. */
  readonly label: string;
  /** Id of the element that describes what can be done here, for screen readers. */
  readonly describedBy?: string;
  /** What "fit" shows, inches. A different box fits anew. */
  readonly bounds: Box;
  /** Pixels round the block at "fit". */
  readonly margin?: number;
  /** The block is seen from its printed side: left and right exchanged. */
  readonly mirrored?: boolean;
  /** `tool`: presses go to `onPointer`. `pan` (the default): drags move the view, taps go to `onPointer`. */
  readonly drag?: 'tool' | 'pan';
  readonly onPointer?: (event: CanvasPointer) => void;
  /** Keys while the canvas has the focus; true: taken, so the canvas does nothing with it. */
  readonly onKey?: (event: KeyboardEvent) => boolean;
  readonly cursor?: string;
  /** A place that has to be seen (the crosshair's): when it leaves the canvas, the view goes after it. */
  readonly inSight?: Point | null;
  /** Konva layers: {@link BlockLayer}s. At most three. */
  readonly children: ReactNode;
  /** DOM laid over the canvas. */
  readonly overlay?: ReactNode;
  readonly testId?: string;
}

/** A view that the maker chose, and the size of the canvas that it is for. */
interface Moved {
  readonly view: View;
  readonly size: Size;
}

/** Before the canvas's size is known. */
const UNSEEN: View = { scale: 1, x: 0, y: 0, flip: 1 };

const MARGIN = 28;
/** CSS pixels that one press of an arrow key moves the view. */
const KEY_PAN = 40;
const KEY_ZOOM = 1.25;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** CSS pixels: a place nearer to the canvas's edge than this is brought farther in. */
const SIGHT = 56;

const intoSight = (at: number, length: number): number =>
  at < SIGHT ? SIGHT - at : at > length - SIGHT ? length - SIGHT - at : 0;

/** The room that the zoom buttons take; they grow for fingers. */
function zoomButtons(): Corner {
  const target = window.matchMedia('(pointer: coarse)').matches ? 44 : 32;
  return { width: 3 * target + 24, height: target + 20 };
}

/** A canvas that shows a block, with zoom and pan by mouse, wheel, keys and touch. */
export function BlockCanvas(props: BlockCanvasProps) {
  const { bounds, margin = MARGIN, mirrored = false } = props;
  const element = useRef<HTMLDivElement>(null);
  const size = useSize(element);
  // Views are kept as from the front, so that turning the block over and back shows the same part of it.
  const turned = (view: View, on: Size) => (mirrored ? turnedOver(view, on) : view);
  const fitting = size === null ? null : turned(fitClear(bounds, size, margin, zoomButtons()), size);
  const [moved, setMoved] = useState<Moved | null>(null);

  // Another block, another size of block: what had been looked at closely is gone.
  const { minX, minY, maxX, maxY } = bounds;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the box's numbers are what matters, not the object
  useEffect(() => setMoved(null), [minX, minY, maxX, maxY]);

  const viewOf = (of: Moved | null) => (of === null ? fitting : turned(of.view, of.size)) ?? UNSEEN;
  const view = viewOf(moved);
  const changeView = (change: (view: View) => View) => {
    if (size === null) return;
    setMoved((before) => {
      const next = change(viewOf(before));
      return { view: next.flip === 1 ? next : turnedOver(next, size), size };
    });
  };
  useGestures(element, {
    view,
    fitting: fitting ?? view,
    drag: props.drag ?? 'pan',
    changeView,
    onPointer: props.onPointer,
  });

  const { inSight = null } = props;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only where the place goes counts; panning away from it is free
  useEffect(() => {
    if (inSight === null || size === null) return;
    const { x, y } = toScreen(view, inSight);
    const dx = intoSight(x, size.width);
    const dy = intoSight(y, size.height);
    if (dx !== 0 || dy !== 0) changeView((now) => pan(now, dx, dy));
  }, [inSight?.x, inSight?.y]);

  const zoom = (factor: number) => {
    if (size === null || fitting === null) return;
    const middle: Point<'screen'> = { x: size.width / 2, y: size.height / 2 };
    changeView((now) => zoomAt(now, middle, factor, fitting));
  };
  const keyDown = (event: KeyboardEvent) => {
    if (event.target !== event.currentTarget || event.defaultPrevented) return;
    if (props.onKey?.(event) === true) {
      event.preventDefault();
      return;
    }
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (arrow !== undefined) changeView((now) => pan(now, arrow[0] * KEY_PAN, arrow[1] * KEY_PAN));
    else if (event.key === '+' || event.key === '=') zoom(KEY_ZOOM);
    else if (event.key === '-') zoom(1 / KEY_ZOOM);
    else if (event.key === '0') setMoved(null);
    else return;
    event.preventDefault();
  };

  return (
    <div className={styles.frame}>
      <div
        ref={element}
        className={styles.canvas}
        style={{ cursor: props.cursor }}
        role="application"
        aria-roledescription="canvas"
        aria-label={props.label}
        aria-describedby={props.describedBy}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: worked by keys, so it must take the focus
        tabIndex={0}
        onKeyDown={keyDown}
        data-testid={props.testId}
        // Where the block lies, for tests that point at places of it: pixels per inch, the block's origin,
        // and -1 when left and right are exchanged.
        data-view={`${view.scale} ${view.x} ${view.y} ${view.flip}`}
      >
        {size !== null && (
          <ViewContext value={view}>
            <ScaleContext value={view.scale}>
              <FlipContext value={view.flip}>
                <Stage width={size.width} height={size.height} listening={false} aria-hidden="true">
                  {props.children}
                </Stage>
              </FlipContext>
            </ScaleContext>
          </ViewContext>
        )}
      </div>
      {props.overlay}
      <div className={styles.zoom} role="toolbar" aria-label={`Zoom, ${props.label}`}>
        <IconButton label="Zoom in" icon={ZoomIn} onClick={() => zoom(KEY_ZOOM)} />
        <IconButton label="Zoom out" icon={ZoomOut} onClick={() => zoom(1 / KEY_ZOOM)} />
        <IconButton label="Show the whole block" icon={Maximize} onClick={() => setMoved(null)} />
      </div>
    </div>
  );
}
