/** A picture as it is kept: small enough to trace from and no larger, without what a camera wrote beside it. */
export interface Picture {
  /** What the maker's file was called. */
  readonly name: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** The picture itself: `data:image/jpeg;base64,…`, or png or webp. */
  readonly data: string;
}

/** Where a picture lies on the block. Its proportions stay its own. */
export interface PicturePlace {
  /** The picture's middle, inches. */
  readonly x: number;
  readonly y: number;
  /** Inches, along the picture's upper edge. */
  readonly width: number;
  /** Degrees anticlockwise from upright: above −180, at most 180. */
  readonly turn: number;
}

/** A picture that lies under the drawing, to be traced. It is never printed. */
export interface Tracing extends PicturePlace {
  /** Shared by all blocks and steps that show the same one: it is the heaviest thing in a pattern. */
  readonly picture: Picture;
  /** How strong it shows: above 0, 1 as it is. */
  readonly strength: number;
  /** Whether its place is kept from slips of the hand. */
  readonly locked: boolean;
  readonly shown: boolean;
}

/** How strong a picture shows at first: lines on it stand out. */
const FIRST_STRENGTH = 0.6;

/** A picture as it is when it comes in. */
export const newTracing = (picture: Picture, place: PicturePlace): Tracing => ({
  picture,
  ...place,
  strength: FIRST_STRENGTH,
  locked: false,
  shown: true,
});
