/**
 * Decimals of a point in the file: 1e-4 pt is 0.04 µm, three hundred times finer than the 0.01 mm that pages are
 * held to.
 */
export const DECIMALS = 4;

const UNIT = 10 ** DECIMALS;

/** More than a number can take: sign, sixteen digits, point, space. */
const LONGEST_NUMBER = 24;

const [ZERO, POINT, MINUS, SPACE] = [48, 46, 45, 32];

/** A content stream while it is written, operand by operand: as bytes, since the text of a long plan is put together slowly. */
export class Operators {
  private stream = new Uint8Array(1 << 14);
  private length = 0;

  /**
   * A number and a space, to {@link DECIMALS}, never with an exponent. Throws a RangeError for what is no finite number: it would
   * go into the file as it is, and make it unreadable.
   */
  number(value: number): this {
    const units = Math.round(value * UNIT);
    if (!Number.isSafeInteger(units)) throw new RangeError('A mark has a coordinate that is no number');
    this.reserve(LONGEST_NUMBER);
    if (units < 0) this.stream[this.length++] = MINUS;
    const size = Math.abs(units);
    const whole = Math.floor(size / UNIT);
    let digits = 1;
    for (let power = 10; power <= whole; power *= 10) digits++;
    this.digits(whole, digits);
    let part = size - whole * UNIT;
    if (part > 0) {
      this.stream[this.length++] = POINT;
      let decimals = DECIMALS;
      for (; part % 10 === 0; part /= 10) decimals--;
      this.digits(part, decimals);
    }
    this.stream[this.length++] = SPACE;
    return this;
  }

  /** Operators, and operands that are no numbers. */
  text(ascii: string): this {
    this.reserve(ascii.length);
    for (let i = 0; i < ascii.length; i++) this.stream[this.length++] = ascii.charCodeAt(i);
    return this;
  }

  /** All that was written. */
  bytes(): Uint8Array {
    return this.stream.subarray(0, this.length);
  }

  private digits(value: number, count: number): void {
    let rest = value;
    for (let at = this.length + count - 1; at >= this.length; at--) {
      const tens = Math.floor(rest / 10);
      this.stream[at] = ZERO + rest - 10 * tens;
      rest = tens;
    }
    this.length += count;
  }

  private reserve(more: number): void {
    if (this.length + more <= this.stream.length) return;
    const longer = new Uint8Array(2 * (this.length + more));
    longer.set(this.stream);
    this.stream = longer;
  }
}
