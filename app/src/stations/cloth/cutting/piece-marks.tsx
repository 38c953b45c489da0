import {
  type LengthUnit,
  middleOfCorners,
  midpoint,
  type Point,
  type Polygon,
  SAME_COORDINATE,
  scaling,
  transformPoint,
  transformPolygon,
} from '@seamwright/geometry';
import { useMemo } from 'react';
import { addPolygon, inFront, type Look } from '../../../canvas/paint-patches.ts';
import { inTurn, type Paint, Painting } from '../../../canvas/painting.tsx';
import { FACE } from '../../../canvas/theme.ts';
import { useLook } from '../../../canvas/use-look.ts';
import { useWork } from '../../../store/work.ts';
import { roughLength } from '../../../ui/rough-length.ts';
import { toleratedTurn } from './tolerated-turn.ts';
import { type InspectedPiece, useInspectedPiece } from './use-inspected-piece.ts';

/**
 * On the block: where the piece is laid down, what it must cover, where it lies after the flip, and what it leaves bare; beside each
 * side its margin, in the middle how far off it may lie.
 */
export function PieceMarks() {
  const look = useLook(inFront);
  const inspected = useInspectedPiece();
  const unit = useWork((work) => work.history.present.unit);
  const paint = useMemo(
    () => inTurn(paintPiece(inspected, look), paintMargins(inspected, look, unit)),
    [inspected, look, unit],
  );
  return <Painting paint={paint} />;
}

/** CSS pixels. */
const LINE = 2.5;
const CASING = 2.5;
const DASHES: readonly number[] = [8, 5];
const DOTS: readonly number[] = [2, 5];

function paintPiece(inspected: InspectedPiece | null, look: Look): Paint {
  const { theme, scale: pixels } = look;
  return (context) => {
    if (inspected === null) return;
    const {
      need,
      sewn,
      block: { scale },
    } = inspected;
    const drawn = scaling(1 / scale);
    const outline = (polygon: Polygon, colour: string, dashes: readonly number[]) => {
      context.beginPath();
      addPolygon(context, transformPolygon(drawn, polygon), look.place);
      context.lineJoin = 'round';
      context.setLineDash([]);
      context.strokeStyle = theme.sheet;
      context.lineWidth = (LINE + 2 * CASING) / pixels;
      context.stroke();
      context.setLineDash(dashes.map((length) => length / pixels));
      context.strokeStyle = colour;
      context.lineWidth = LINE / pixels;
      context.stroke();
      context.setLineDash([]);
    };
    if (need.sewLine !== null) outline(sewn.laid, theme.accent, DOTS);
    outline(need.needed, theme.ink, DASHES);
    outline(sewn.flipped, theme.accent, []);
    context.beginPath();
    for (const part of sewn.uncovered) addPolygon(context, transformPolygon(drawn, part), look.place);
    context.fillStyle = theme.wrong;
    context.fill();
  };
}

/** CSS pixels: from a side to its margin's middle. */
const BESIDE = 14;

function paintMargins(inspected: InspectedPiece | null, look: Look, unit: LengthUnit): Paint {
  const { theme, scale: pixels } = look;
  return (context) => {
    if (inspected === null) return;
    const { sewn, piece, isTried, block } = inspected;
    const drawn = scaling(1 / block.scale);
    const write = (words: string, at: Point, [right, down]: readonly [number, number], colour: string) => {
      const { x, y } = look.place(transformPoint(drawn, at));
      context.save();
      context.translate(x, y);
      context.scale(1 / pixels, 1 / pixels);
      context.font = `600 13px ${FACE}`;
      context.textAlign = 'center';
      context.textBaseline = 'middle';
      context.lineJoin = 'round';
      context.lineWidth = 4;
      context.strokeStyle = theme.sheet;
      context.strokeText(words, right, down);
      context.fillStyle = colour;
      context.fillText(words, right, down);
      context.restore();
    };
    const centre = middleOfCorners(sewn.flipped);
    for (const { a, b, margin } of sewn.sides) {
      const at = midpoint(a, b);
      const away = Math.hypot(at.x - centre.x, at.y - centre.y);
      const out = [(BESIDE * (at.x - centre.x)) / away, (BESIDE * (at.y - centre.y)) / away] as const;
      const isShort = margin < -SAME_COORDINATE;
      write(marginWords(margin, unit), at, out, isShort ? theme.ink : theme.accent);
    }
    if (isTried) return;
    const turn = toleratedTurn(piece);
    write(
      `± ${roughLength(piece.toleranceShift, unit, '≈')} · ${turn === null ? 'any turn' : `± ${turn}`}`,
      centre,
      [0, 0],
      theme.ink,
    );
  };
}

const marginWords = (margin: number, unit: LengthUnit): string =>
  margin < -SAME_COORDINATE
    ? `−${roughLength(-margin, unit, '≈')}`
    : roughLength(Math.max(margin, 0), unit, '≈');
