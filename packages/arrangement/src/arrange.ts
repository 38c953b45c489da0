import {
  checkSimple,
  fail,
  isClockwise,
  ok,
  type Polygon,
  type Result,
  reversed,
} from '@seamwright/geometry';
import type { Drawing } from './drawing.ts';
import { collectFindings } from './findings.ts';
import { connectedParts, isBridge, type Link, linkPlaces, Outgoing, traceFaces } from './graph.ts';
import { findIncidences } from './incidence.ts';
import { groupLines, stretchesOf } from './lines.ts';
import { gatherNodes } from './nodes.ts';
import { buildStructure } from './patches.ts';
import { ATTEMPTS, type Tolerances } from './tolerances.ts';
import type { Arrangement } from './types.ts';

/**
 * Works out a block's plane structure: which patches the splits make of the outline, which vertices, edges and
 * straight lines bound them, and what is to be said of lines that do not meet as they should.
 *
 * - Splits may cross, touch, overlap, repeat, end loose or reach beyond the outline: each has a defined result and,
 *   where the maker should know, a finding.
 * - Collinear splits are one line; vertices remember the lines through them.
 * - The order and the direction in which splits were drawn do not matter.
 *
 * @returns a Problem when the outline is no simple polygon, when a line refers to a point that does not exist, or when
 *   lines run so close together that no plane drawing comes of them.
 */
export function arrange(drawing: Drawing): Result<Arrangement> {
  const missing = [...drawing.outline, ...drawing.splits.flatMap(({ from, to }) => [from, to])].find(
    (id) => drawing.points[id] === undefined,
  );
  if (missing !== undefined) {
    return fail(
      'A line ends in a point that the drawing does not have',
      `point ${missing}`,
      'Draw the line again',
    );
  }
  const corners: Polygon = drawing.outline.map((id) => drawing.points[id]!);
  const simple = checkSimple(corners);
  if (!simple.ok) return simple;
  const plain = corners.map(({ x, y }) => ({ x, y }));
  const outline = isClockwise(plain) ? plain : reversed(plain);

  for (const tolerances of ATTEMPTS) {
    const arrangement = attempt(drawing, outline, tolerances);
    if (arrangement !== null) return ok(arrangement);
  }
  return fail(
    'Some lines run so close together that they cannot be told apart',
    '',
    'Move them apart by at least 1/64 in, or take one of them away',
  );
}

function attempt(drawing: Drawing, outline: Polygon, tolerances: Tolerances): Arrangement | null {
  const nodes = gatherNodes(drawing, tolerances.snap);
  const { stretches, tooShort } = stretchesOf(drawing, nodes);
  const groups = groupLines(stretches, nodes, tolerances);
  const incidence = findIncidences(drawing, nodes, groups, tolerances);
  const { places } = incidence;
  const links = linkPlaces(incidence, outline);
  const at = (place: number) => places[place]!.at;
  const faces = traceFaces(links.inside, at);
  const kept = links.inside.filter((link, i) => link.onOutline || !isBridge(faces, i));
  if (!outlineHolds(kept, drawing.outline.length)) return null;

  const structure = buildStructure(incidence, kept, (place) => nodes.nodes[place]?.points ?? []);
  if (structure === null) return null;
  const findings = collectFindings({ drawing, outline, nodes, places, links, faces, kept, tooShort });
  return { ...structure, outline, findings };
}

/** Whether the outline's edges are still one closed ring: every corner and every place on it with one way on. */
function outlineHolds(links: readonly Link[], corners: number): boolean {
  const edges = links.filter((link) => link.onOutline);
  if (edges.length < corners) return false;
  const outgoing = new Outgoing(edges);
  for (let place = 0; place < outgoing.places; place += 1) {
    if (outgoing.degree(place) !== 0 && outgoing.degree(place) !== 2) return false;
  }
  return connectedParts(edges).every((part) => part <= 0);
}
