import { arrange, drawingFromSegments } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';
import { expect } from 'vitest';
import { planSewing, replay, sewingReport, type Verdict } from '../src/index.ts';
import { gridDissections, type Room } from './floorplans.ts';

/** How many dissections there are, how many are sewn with straight seams, and how many on one foundation. */
export interface Counts {
  readonly all: number;
  readonly straight: number;
  readonly one: number;
}

/** A rectangle cut into rooms by walls. */
export interface Dissection {
  readonly rooms: number;
  readonly width: number;
  readonly height: number;
  readonly walls: readonly Segment[];
}

/** Counts dissections by their verdicts; each plan is re-played by the independent checker. */
export function countVerdicts(dissections: readonly Dissection[]): Counts {
  const verdicts = dissections.map(verdictOf);
  const number = (...of: Verdict[]) => verdicts.filter((verdict) => of.includes(verdict)).length;
  return {
    all: verdicts.length,
    straight: number('one foundation', 'several foundations'),
    one: number('one foundation'),
  };
}

function verdictOf({ rooms, width, height, walls }: Dissection): Verdict {
  const outline = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const result = arrange(drawingFromSegments(outline, walls));
  if (!result.ok) throw new Error(result.problem.what);
  expect(result.value.patches).toHaveLength(rooms);
  const plan = planSewing(result.value);
  if (plan.verdict !== 'not sewable') expect(replay(sewingReport(result.value, plan))).toEqual([]);
  return plan.verdict;
}

/** All ways to cut a grid into rectangles with whole sides, as dissections. */
export const gridsCut = (columns: number, rows: number): Dissection[] =>
  gridDissections(columns, rows).map((rooms) => ({
    rooms: rooms.length,
    width: columns,
    height: rows,
    walls: rooms.flatMap((room) => wallsOfRoom(room, columns, rows)),
  }));

function wallsOfRoom({ left, top, right, bottom }: Room, columns: number, rows: number): Segment[] {
  const walls: Segment[] = [];
  if (right < columns) walls.push({ a: { x: right, y: top }, b: { x: right, y: bottom } });
  if (bottom < rows) walls.push({ a: { x: left, y: bottom }, b: { x: right, y: bottom } });
  return walls;
}
