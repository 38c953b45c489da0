/**
 * Re-plays a sewing report patch by patch, as a checker that trusts nothing: it imports nothing from the solver, not
 * even the geometry package, and sees only what an outside program sees, the polygons of the report.
 *
 * Where two polygons touch is found by laying their sides on each other within {@link TOUCH}.
 */

type Pair = readonly [number, number];
type Side = readonly [Pair, Pair];

/** The parts of a `seamwright-sewing/1` report that the checker reads. */
export interface ReplayedReport {
  readonly verdict: string;
  readonly outline: readonly Pair[];
  readonly pieces: readonly { readonly name: string; readonly polygon: readonly Pair[] }[];
  readonly foundations: readonly { readonly letter: string; readonly order: readonly string[] }[];
  readonly joins: readonly {
    readonly units: readonly [string, string];
    readonly makes: string;
    readonly seam: Side;
    /** Sewn from the seam's first point, and not to its end. */
    readonly partial: boolean;
    /** Of a partial join: the stretch that is left, from where the sewing stops outwards, and the join after which it is closed. */
    readonly open?: { readonly seam: Side; readonly closedAfter: number };
  }[];
}

/**
 * Inches: how far apart two sides may lie and still touch, and how far a seam may stray from one straight line. It is
 * the sewer's 1/128 in; kept here and not taken from the geometry package, so that a change there is noticed.
 */
const TOUCH = 1 / 128;

/**
 * Inches: a shared stretch shorter than this is two corners that meet, not a contact. As large as what counts as the same
 * coordinate, and kept here for the same reason. Larger would leave out contacts that the solver sees; smaller would take the
 * rounding of a corner for one.
 */
const SHORTEST_CONTACT = 1e-6;

/**
 * What is wrong with a report that calls a block sewable; empty when every step can be sewn as it says.
 *
 * - every piece is in exactly one foundation, once;
 * - in each foundation, each piece but the first touches those before it, along one straight line;
 * - the joins use every foundation once, in working order, each along one straight line with the seam as given, and
 *   make one block;
 * - a partial join stops somewhere along its seam, and what it leaves open runs straight on from there; until that is
 *   closed, units may touch across it; it is closed when all that lies on both sides of it is in one unit, from whose
 *   boundary it is reached, and no foundation holds both sides; only the verdict `partial seams` has such joins;
 * - the pieces' areas add up to the outline's.
 */
export function replay(report: ReplayedReport): string[] {
  const faults: string[] = [];
  const polygonOf = new Map(report.pieces.map(({ name, polygon }) => [name, polygon]));
  const total = report.pieces.reduce((sum, { polygon }) => sum + shoelace(polygon), 0);
  if (Math.abs(total - shoelace(report.outline)) > TOUCH * perimeter(report.outline)) {
    faults.push(`the pieces’ areas add up to ${total}, the outline’s is ${shoelace(report.outline)}`);
  }

  if ((report.verdict === 'partial seams') !== report.joins.some(({ partial }) => partial))
    faults.push(`the verdict is ${report.verdict}, and the joins say otherwise`);
  const openSeams = report.joins.flatMap(({ open, makes }, made) =>
    open === undefined ? [] : [{ ...open, makes, made, closed: false }],
  );
  const seen = new Set<string>();
  const units = new Map<string, readonly string[]>();
  for (const { letter, order } of report.foundations) {
    order.forEach((name, k) => {
      if (name !== `${letter}${k + 1}`)
        faults.push(`${name} stands at place ${k + 1} of foundation ${letter}`);
      if (seen.has(name)) faults.push(`${name} is sewn twice`);
      if (!polygonOf.has(name)) faults.push(`${name} is no piece`);
      seen.add(name);
    });
    order.slice(1).forEach((name, k) => {
      const contact = contactOf([name], order.slice(0, k + 1), polygonOf);
      if (contact.length === 0) faults.push(`${name} touches nothing sewn before it`);
      else if (!isStraight(contact))
        faults.push(`${name} touches what is sewn before it on more than one line`);
      if (openSeams.some(({ seam }) => contact.some((side) => overlap(seam, side).some(isMoreThanAPoint))))
        faults.push(`${name} lies across an open seam from what is on its own foundation`);
    });
    units.set(letter, order);
  }
  for (const name of polygonOf.keys()) if (!seen.has(name)) faults.push(`${name} is in no foundation`);

  report.joins.forEach(({ units: joined, makes, seam, partial, open }, index) => {
    const [a, b] = joined.map((unit) => units.get(unit));
    if (a === undefined || b === undefined) {
      faults.push(`${joined.join(' + ')} cannot be joined: one of them is not there`);
      return;
    }
    const contact = contactOf(a, b, polygonOf).filter(
      (side) => !openSeams.some((other) => !other.closed && liesAlong(side, other.seam)),
    );
    if (contact.length === 0) faults.push(`${joined.join(' and ')} do not touch`);
    else if (!isStraight(contact)) faults.push(`${joined.join(' and ')} touch on more than one line`);
    else if (!sameRun(contact, seam)) faults.push(`the seam of ${makes} is not where its units touch`);
    if (partial !== (open !== undefined))
      faults.push(
        `the join of ${makes} is partial, and what it leaves open is not told, or the other way round`,
      );
    else if (open !== undefined && !runsOn(seam, open.seam))
      faults.push(`what the join of ${makes} leaves open does not run on from where its seam stops`);
    for (const unit of joined) units.delete(unit);
    units.set(makes, [...a, ...b]);

    // One that opens into another is closed before it.
    const due = openSeams.filter(({ closedAfter }) => closedAfter === index);
    for (let ready = due; ready.length > 0; ) {
      ready = due.filter((one) => {
        const others = openSeams.filter((other) => other !== one && !other.closed).map((other) => other.seam);
        const unit = [...units.values()].find((u) => coversBothSides(u, one.seam, polygonOf));
        return (
          !one.closed &&
          one.made <= index &&
          unit !== undefined &&
          reaches(unit, one.seam[1], others, polygonOf)
        );
      });
      for (const one of ready) one.closed = true;
    }
  });
  for (const { makes, closed } of openSeams)
    if (!closed) faults.push(`what the join of ${makes} leaves open cannot be closed when it should be`);
  if (units.size !== 1) faults.push(`${units.size} units are left, not one block`);
  return faults;
}

const lengthOf = ([p, q]: Side): number => Math.hypot(q[0] - p[0], q[1] - p[1]);

const isMoreThanAPoint = (side: Side): boolean => lengthOf(side) > TOUCH;

/** Whether the whole of a stretch lies on another. */
function liesAlong(side: Side, other: Side): boolean {
  const shared = overlap(side, other)[0];
  return shared !== undefined && lengthOf(side) - lengthOf(shared) <= TOUCH;
}

/** Whether what is open goes straight on from somewhere along a seam, over its second point or up to it. */
function runsOn(seam: Side, open: Side): boolean {
  if (!isStraight([seam, open])) return false;
  const [p, q] = seam;
  const along = ([x, y]: Pair) => ((x - p[0]) * (q[0] - p[0]) + (y - p[1]) * (q[1] - p[1])) / lengthOf(seam);
  const [from, to] = [along(open[0]), along(open[1])];
  return from > TOUCH && from < lengthOf(seam) - TOUCH && to >= lengthOf(seam) - TOUCH;
}

/** Whether pieces of one unit lie on both sides of a stretch, all along it. */
function coversBothSides(
  unit: readonly string[],
  stretch: Side,
  polygonOf: ReadonlyMap<string, readonly Pair[]>,
): boolean {
  const shared = unit.flatMap((name, i) => contactOf([name], unit.slice(i + 1), polygonOf));
  const from = ([x, y]: Pair) => Math.hypot(x - stretch[0][0], y - stretch[0][1]);
  const covered = shared
    .flatMap((side) => overlap(stretch, side))
    .map(([p, q]) => [Math.min(from(p), from(q)), Math.max(from(p), from(q))] as const)
    .sort(([p], [q]) => p - q);
  let reached = 0;
  for (const [low, high] of covered) if (low <= reached + TOUCH) reached = Math.max(reached, high);
  return reached >= lengthOf(stretch) - TOUCH;
}

/** Whether a point lies on a unit's boundary or on a seam that is still open, so that a seam can be sewn out to it. */
function reaches(
  unit: readonly string[],
  point: Pair,
  open: readonly Side[],
  polygonOf: ReadonlyMap<string, readonly Pair[]>,
): boolean {
  if (open.some((seam) => distanceTo(point, seam) <= TOUCH)) return true;
  const sides = unit.flatMap((name) => sidesOf(polygonOf.get(name) ?? []).map((side) => ({ name, side })));
  return sides.some(({ name, side }) => {
    if (distanceTo(point, side) > TOUCH) return false;
    const own = lengthOf(side);
    const at = Math.hypot(point[0] - side[0][0], point[1] - side[0][1]);
    const shared = sides.flatMap((other) => (other.name === name ? [] : overlap(side, other.side)));
    // A little way from the point along the side, back and forth: is another piece of the unit there?
    return [at - 4 * TOUCH, at + 4 * TOUCH].some((s) => {
      if (s < 0 || s > own) return false;
      const beside: Pair = [
        side[0][0] + ((side[1][0] - side[0][0]) * s) / own,
        side[0][1] + ((side[1][1] - side[0][1]) * s) / own,
      ];
      return !shared.some((stretch) => distanceTo(beside, stretch) <= TOUCH);
    });
  });
}

/** How far a point is from a stretch. */
function distanceTo([x, y]: Pair, [p, q]: Side): number {
  const squared = (q[0] - p[0]) ** 2 + (q[1] - p[1]) ** 2;
  const share = squared === 0 ? 0 : ((x - p[0]) * (q[0] - p[0]) + (y - p[1]) * (q[1] - p[1])) / squared;
  const t = Math.min(1, Math.max(0, share));
  return Math.hypot(x - p[0] - t * (q[0] - p[0]), y - p[1] - t * (q[1] - p[1]));
}

/** The stretches of boundary that two groups of pieces share. */
function contactOf(
  group: readonly string[],
  other: readonly string[],
  polygonOf: ReadonlyMap<string, readonly Pair[]>,
): Side[] {
  const sides = (names: readonly string[]) => names.flatMap((name) => sidesOf(polygonOf.get(name) ?? []));
  const others = sides(other);
  return sides(group).flatMap((side) => others.flatMap((o) => overlap(side, o)));
}

const sidesOf = (polygon: readonly Pair[]): Side[] =>
  polygon.map((p, i) => [p, polygon[(i + 1) % polygon.length]!] as const);

/** The stretch of `side` along which `other` lies: one or none. */
function overlap([p, q]: Side, other: Side): Side[] {
  const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
  if (length === 0) return [];
  const along = ([x, y]: Pair) => ((x - p[0]) * (q[0] - p[0]) + (y - p[1]) * (q[1] - p[1])) / length;
  const off = ([x, y]: Pair) => ((x - p[0]) * (q[1] - p[1]) - (y - p[1]) * (q[0] - p[0])) / length;
  const [s, t] = [along(other[0]), along(other[1])];
  if (s === t) return [];
  const at = (u: number): Pair => [p[0] + ((q[0] - p[0]) * u) / length, p[1] + ((q[1] - p[1]) * u) / length];
  const offAt = (u: number) => off(other[0]) + ((off(other[1]) - off(other[0])) * (u - s)) / (t - s);
  const low = Math.max(0, Math.min(s, t));
  const high = Math.min(length, Math.max(s, t));
  if (high - low < SHORTEST_CONTACT) return [];
  // Two sides that diverge from a common corner stay near each other for a while; a contact does so to its end.
  return Math.abs(offAt(low)) <= TOUCH && Math.abs(offAt(high)) <= TOUCH ? [[at(low), at(high)]] : [];
}

/** Whether no end of the stretches strays from the line through the two that are farthest apart. */
function isStraight(stretches: readonly Side[]): boolean {
  const ends = stretches.flat();
  const [p, q] = farthest(ends);
  const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
  return ends.every(
    ([x, y]) => Math.abs((x - p[0]) * (q[1] - p[1]) - (y - p[1]) * (q[0] - p[0])) / length <= 2 * TOUCH,
  );
}

function sameRun(stretches: readonly Side[], [a, b]: Side): boolean {
  const [p, q] = farthest(stretches.flat());
  const near = (u: Pair, v: Pair) => Math.hypot(u[0] - v[0], u[1] - v[1]) <= 2 * TOUCH;
  return (near(p, a) && near(q, b)) || (near(p, b) && near(q, a));
}

function farthest(points: readonly Pair[]): Side {
  // From any point, the farthest one is an end of a straight run; from there, the other.
  const from = (p: Pair) =>
    points.reduce((best, q) =>
      Math.hypot(q[0] - p[0], q[1] - p[1]) > Math.hypot(best[0] - p[0], best[1] - p[1]) ? q : best,
    );
  const p = from(points[0]!);
  return [p, from(p)];
}

function shoelace(polygon: readonly Pair[]): number {
  const doubled = sidesOf(polygon).reduce((sum, [p, q]) => sum + (p[0] * q[1] - q[0] * p[1]), 0);
  return Math.abs(doubled) / 2;
}

const perimeter = (polygon: readonly Pair[]): number =>
  sidesOf(polygon).reduce((sum, [p, q]) => sum + Math.hypot(q[0] - p[0], q[1] - p[1]), 0);
