import type { Arrangement } from '@seamwright/arrangement';
import {
  distanceToSegment,
  dot,
  type Point,
  SAME_COORDINATE,
  type Segment,
  subtract,
} from '@seamwright/geometry';

/** A seam that was sewn in part, with the rest to be closed later; inches on the block as it is drawn. */
export interface OpenSeam {
  /** What is open, from where the sewing stopped. */
  readonly seam: Segment;
  /** The number of the join that sewed the other part, and of the one after which this is closed. */
  readonly join: number;
  readonly closedAfter: number;
  readonly line: number;
  /** Square to it, of length 1. */
  readonly towardsSecond: Point;
}

/** The seams that are open while a block is put together, and which patch lies on which side of them. */
export class OpenSeams {
  private open: readonly OpenSeam[] = [];

  constructor(private readonly arrangement: Arrangement) {}

  add(seam: OpenSeam): void {
    this.open = [...this.open, seam];
  }

  /** Takes out and gives one that is to be closed now, those that open into others first; undefined where there is none. */
  close(join: number): OpenSeam | undefined {
    const due = this.open.filter(({ closedAfter }) => closedAfter === join);
    const next = due.find((one) => due.every((other) => other === one || !touches(one.seam, other.seam.b)));
    this.open = this.open.filter((one) => one !== next);
    return next;
  }

  /**
   * Whether a patch lies on the second side of an open seam: as its edge there says or, where it has none, its middle.
   */
  onSecond({ seam, line, towardsSecond }: OpenSeam): (patch: number) => boolean {
    const { edges, vertices, patches } = this.arrangement;
    const sides = new Map<number, boolean>();
    for (const { from, to, line: along, left, right } of edges) {
      const ends = [vertices[from]!.at, vertices[to]!.at] as const;
      if (along !== line || !ends.every((end) => touches(seam, end))) continue;
      const isRightSecond = dot(leftHand(ends), towardsSecond) < 0;
      sides.set(left, !isRightSecond).set(right, isRightSecond);
    }
    return (patch) => sides.get(patch) ?? dot(subtract(patches[patch]!.heart, seam.a), towardsSecond) > 0;
  }

  /**
   * The patches that a fold along a seam leaves alone: where the seam ends on an open one, those beyond that.
   */
  beyond(seam: Segment): (patch: number) => boolean {
    const tests = this.open.flatMap((open) => {
      const [end, other] = touches(open.seam, seam.a) ? [seam.a, seam.b] : [seam.b, seam.a];
      if (!touches(open.seam, end)) return [];
      const onSecond = this.onSecond(open);
      const isOnSecond = dot(subtract(other, end), open.towardsSecond) > 0;
      return [(patch: number) => onSecond(patch) !== isOnSecond];
    });
    return (patch) => tests.some((test) => test(patch));
  }
}

/** Square to the way from the first to the second point, to its left as it is seen on the screen. */
const leftHand = ([from, to]: readonly [Point, Point]): Point => ({ x: to.y - from.y, y: from.x - to.x });

const touches = ({ a, b }: Segment, point: Point): boolean =>
  distanceToSegment(point, a, b) <= SAME_COORDINATE;
