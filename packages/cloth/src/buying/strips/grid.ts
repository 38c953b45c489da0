import { CUTTING_GRID, SAME_COORDINATE } from '@seamwright/geometry';

/** A size that is cut, in steps of the grid, rounded up. */
export const toGrid = (inches: number): number => Math.ceil((inches - SAME_COORDINATE) / CUTTING_GRID);

/** Room that there is, in steps of the grid, rounded down. */
export const roomOnGrid = (inches: number): number => Math.floor((inches + SAME_COORDINATE) / CUTTING_GRID);

export const fromGrid = (steps: number): number => steps * CUTTING_GRID;

/** The largest step of which all are whole multiples. */
export const commonStep = (numbers: readonly number[]): number => numbers.reduce(gcd, 0);

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
