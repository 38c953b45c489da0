import type { ReactNode } from 'react';
import type { Study } from '../study/study.ts';
import { FindingMark } from './finding-mark.tsx';
import { inFront, PatchEdge, PatchFill, PatchName, PatchSelection, type Place } from './patch-shape.tsx';

interface StudyProps {
  readonly study: Study;
  readonly place?: Place;
}

interface StudiedPatchesProps extends StudyProps {
  /** What lies on the fills and under the seams and names. */
  readonly children?: ReactNode;
}

/** The studied block: fills, seams and names, one small component for each patch. Goes into the still layer. */
export function StudiedPatches({ study, place = inFront, children }: StudiedPatchesProps) {
  const patches = study.arrangement?.patches ?? [];
  return (
    <>
      {patches.map((patch) => (
        <PatchFill
          key={patch.index}
          patch={patch}
          section={study.sectionOf[patch.index] ?? -1}
          place={place}
        />
      ))}
      {children}
      {patches.map((patch) => (
        <PatchEdge key={patch.index} patch={patch} place={place} />
      ))}
      {patches.map((patch) => (
        <PatchName key={patch.index} patch={patch} name={study.names[patch.index] ?? '?'} place={place} />
      ))}
    </>
  );
}

/** Rings round the patches in hand. */
export function SelectedPatches({ study, place = inFront }: StudyProps) {
  return study.arrangement?.patches.map((patch) => {
    const record = study.records[patch.index];
    if (record === undefined) return null;
    return <PatchSelection key={record.id} patch={patch} id={record.id} place={place} />;
  });
}

/** Signs and numbers of the findings. */
export function FindingMarks({ study, place = inFront }: StudyProps) {
  return study.findings.map((finding, index) => (
    <FindingMark
      // biome-ignore lint/suspicious/noArrayIndexKey: a finding is known by its number
      key={index}
      finding={finding}
      number={index + 1}
      place={place}
    />
  ));
}
