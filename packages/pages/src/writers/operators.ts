/**
 * Decimals of a point in the file: 1e-4 pt is 0.04 µm, three hundred times finer than the 0.01 mm that pages are
 * held to.
 */
export const DECIMALS = 4;

const UNIT = 10 ** DECIMALS;

/** A content stream while it is written, operand by operand. */
export class Operators {
  private stream = '';

  /**
   * A number and a space, to {@link DECIMALS}; never so small that it would be written with an exponent. Throws a RangeError for what
   * is no finite number: it would go into the file as it is, and make it unreadable.
   */
  number(value: number): this {
    const rounded = Math.round(value * UNIT) / UNIT;
    if (!Number.isFinite(rounded)) throw new RangeError('A mark has a coordinate that is no number');
    this.stream += `${rounded} `;
    return this;
  }

  /** Operators, and operands that are no numbers. */
  text(ascii: string): this {
    this.stream += ascii;
    return this;
  }

  /** All that was written. */
  toString(): string {
    return this.stream;
  }
}
