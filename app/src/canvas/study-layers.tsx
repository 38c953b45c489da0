import { boundingBox, type Point } from '@seamwright/geometry';
import { type ReactNode, useMemo } from 'react';
import { useWork } from '../store/work.ts';
import type { Study } from '../study/study.ts';
import { FindingMark, placesOf } from './finding-mark.tsx';
import { KeptPainting } from './kept-painting.tsx';
import { markPlaces, type Stand } from './mark-places.ts';
import {
  addPolygon,
  inFront,
  type Look,
  type Place,
  paintFills,
  paintNames,
  paintSeams,
  sectionFills,
  writtenNames,
} from './paint-patches.ts';
import { inTurn, Painting } from './painting.tsx';
import { PointedMarks } from './pointed-marks.tsx';
import { RingMarks } from './ring-marks.tsx';
import { useLook } from './use-look.ts';
import { useScale } from './view-context.ts';

interface StudyProps {
  readonly study: Study;
  readonly place?: Place;
}

interface StudiedPatchesProps extends StudyProps {
  /** What lies on the fills and under the seams and names. */
  readonly children?: ReactNode;
}

/** The studied block: fills, seams and names. Goes into the still layer. */
export function StudiedPatches({ study, place = inFront, children }: StudiedPatchesProps) {
  const look = useLook(place);
  const { arrangement, sectionOf, names } = study;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the fills show of the study
  const fills = useMemo(() => paintFills(sectionFills(study, look)), [arrangement, sectionOf, look]);
  const seams = useMemo(() => paintSeams(arrangement, look), [arrangement, look]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the names show of the study
  const written = useMemo(() => paintNames(study, look), [arrangement, names, look]);
  const over = useMemo(() => inTurn(seams, written), [seams, written]);
  return (
    <>
      <KeptPainting paint={fills} study={study} look={look} />
      {children}
      <KeptPainting paint={over} study={study} look={look} />
    </>
  );
}

/** CSS pixels. */
const RING = 4;

/** Rings round the patches in hand, their names still readable. */
export function SelectedPatches({ study, place = inFront }: StudyProps) {
  const look = useLook(place);
  const ids = useWork((work) => work.selection.patches);
  const paint = useMemo(() => paintChosen(study, ids, look), [study, ids, look]);
  return <Painting paint={paint} />;
}

function paintChosen(study: Study, ids: readonly string[], look: Look) {
  const { theme, scale, place } = look;
  const chosen = ids.flatMap((id) => {
    const patch = study.arrangement?.patches[study.records.findIndex((record) => record.id === id)];
    return patch === undefined ? [] : [patch];
  });
  const names = study.arrangement === null ? null : paintNames(only(study, chosen), look);
  return (context: CanvasRenderingContext2D) => {
    if (chosen.length === 0) return;
    context.beginPath();
    for (const { polygon } of chosen) addPolygon(context, polygon, place);
    context.fillStyle = theme['accent-soft'];
    context.strokeStyle = theme.accent;
    context.lineWidth = RING / scale;
    context.lineJoin = 'round';
    context.fill();
    context.stroke();
    names?.(context);
  };
}

const only = (study: Study, patches: NonNullable<Study['arrangement']>['patches']): Study => ({
  ...study,
  arrangement: { ...study.arrangement!, patches },
});

/** Signs and numbers of the findings, and what a list beside the canvas is at. */
export function FindingMarks({ study, place = inFront }: StudyProps) {
  const scale = useScale();
  const marks = useMemo(() => marksOf(study, scale, place), [study, scale, place]);
  return (
    <>
      <RingMarks study={study} place={place} />
      <PointedMarks study={study} place={place} />
      {study.findings.map((finding, index) => (
        <FindingMark
          // biome-ignore lint/suspicious/noArrayIndexKey: a finding is known by its number
          key={index}
          finding={finding}
          number={index + 1}
          marks={marks[index]!}
        />
      ))}
    </>
  );
}

/** Of every finding, where its marks stand: beside the patches' names, and beside each other. */
function marksOf(study: Study, scale: number, place: Place): readonly (readonly Stand[])[] {
  const onScreen = (point: Point) => {
    const { x, y } = place(point);
    return { x: x * scale, y: y * scale };
  };
  const places = study.findings.map(placesOf);
  const outline = study.arrangement?.outline ?? [];
  if (places.length === 0 || outline.length === 0) return places.map(() => []);
  const { minX, minY, maxX, maxY } = boundingBox(outline);
  const block = {
    ...onScreen({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 }),
    halfWidth: ((maxX - minX) / 2) * scale,
    halfHeight: ((maxY - minY) / 2) * scale,
  };
  const stands = markPlaces(places.flat().map(onScreen), writtenNames(study, scale, place), block);
  let next = 0;
  return places.map((some) => some.map(() => stands[next++]!));
}
