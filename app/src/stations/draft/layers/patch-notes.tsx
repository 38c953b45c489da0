import type { Patch } from '@seamwright/arrangement';
import 'konva/lib/shapes/Line.js';
import 'konva/lib/shapes/Text.js';
import { memo } from 'react';
import { Line, Text } from 'react-konva/lib/ReactKonvaCore.js';
import { flat } from '../../../canvas/outline-shape.tsx';
import { FACE, useTheme } from '../../../canvas/theme.ts';
import { useFlip, useScale } from '../../../canvas/view-context.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import type { Study } from '../../../study/study.ts';
import { useDraftView } from '../views/draft-view.ts';
import { roomUnder } from './note-room.ts';

/** What the maker gave the patches, and a ring round the one in hand; the names below stay readable. */
export function PatchNotes({ study }: { readonly study: Study }) {
  const records = useWork((work) => currentBlock(work).patches);
  const inHand = useWork((work) => work.selection.patches);
  const notes = new Map(records.flatMap(({ id, note }) => (note === '' ? [] : [[id, note] as const])));
  const chosen = new Set(inHand);
  // Most patches have neither: blocks of thousands of patches stay quick.
  return study.arrangement?.patches.map((patch) => {
    const id = study.records[patch.index]?.id;
    if (id === undefined || !(notes.has(id) || chosen.has(id))) return null;
    return <OnePatch key={id} patch={patch} note={notes.get(id) ?? ''} chosen={chosen.has(id)} />;
  });
}

interface OnePatchProps {
  readonly patch: Patch;
  readonly note: string;
  readonly chosen: boolean;
}

const OnePatch = memo(function OnePatch({ patch, note, chosen }: OnePatchProps) {
  return (
    <>
      {chosen && <Ring patch={patch} />}
      {note !== '' && <Note patch={patch} note={note} />}
    </>
  );
});

function Ring({ patch }: { readonly patch: Patch }) {
  const theme = useTheme();
  return (
    <Line
      points={flat(patch.polygon)}
      closed
      stroke={theme.accent}
      strokeWidth={5}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
      lineJoin="round"
    />
  );
}

/** CSS pixels. */
const SIZE = 13;
/** CSS pixels from the patch's heart, where its name stands, down to the note. */
const BELOW = 14;
/** CSS pixels beside the note. */
const AIR = 4;
/** A letter is about this share of its size wide. */
const LETTER = 0.52;

function Note({ patch, note }: { readonly patch: Patch; readonly note: string }) {
  const theme = useTheme();
  const scale = useScale();
  const flip = useFlip();
  // On fabrics words could not be read, and of lines only they are none.
  const written = useDraftView(({ kind }) => kind === 'front' || kind === 'printed');
  const room = roomUnder(patch, BELOW / scale, (BELOW + SIZE + 2) / scale) * scale - 2 * AIR;
  const least = Math.min(note.length, 6) * SIZE * LETTER;
  // The full words are in the panel; on a small patch a scrap of them would only be in the way.
  if (!written || room < least || patch.depth * scale < BELOW + SIZE) return null;
  return (
    <Text
      text={note}
      x={patch.heart.x - (flip * room) / 2 / scale}
      y={patch.heart.y + BELOW / scale}
      width={room}
      height={SIZE * 1.2}
      scaleX={flip / scale}
      scaleY={1 / scale}
      align="center"
      wrap="none"
      ellipsis
      fontFamily={FACE}
      fontSize={SIZE}
      fill={theme.ink}
      perfectDrawEnabled={false}
    />
  );
}
