/**
 * Decimals of a point in the file: 1e-4 pt is 0.04 µm, three hundred times finer than the 0.01 mm that pages are
 * held to.
 */
export const DECIMALS = 4;

const UNIT = 10 ** DECIMALS;

const [ZERO, MINUS, DOT, SPACE] = [0x30, 0x2d, 0x2e, 0x20];

/** Bytes that a number needs at most, with the space behind it. */
const LONGEST_NUMBER = 24;

/**
 * A content stream while it is written, operand by operand. As bytes: a plan of 500 foundations has a hundred thousand numbers, and as
 * many strings would take longer than all else.
 */
export class Operators {
  private bytes = new Uint8Array(1 << 13);
  private length = 0;

  /**
   * A number and a space, to {@link DECIMALS}. Throws a RangeError for what is no finite number: it would go into the file as it is, and
   * make it unreadable.
   */
  number(value: number): this {
    const units = Math.round(Math.abs(value) * UNIT);
    if (!Number.isFinite(units)) throw new RangeError('A mark has a coordinate that is no number');
    this.reserve(LONGEST_NUMBER);
    if (value < 0 && units > 0) this.bytes[this.length++] = MINUS;
    const whole = Math.floor(units / UNIT);
    this.digits(whole);
    let part = units - whole * UNIT;
    if (part > 0) this.bytes[this.length++] = DOT;
    for (let unit = UNIT / 10; part > 0; unit /= 10) {
      const digit = Math.floor(part / unit);
      this.bytes[this.length++] = ZERO + digit;
      part -= digit * unit;
    }
    this.bytes[this.length++] = SPACE;
    return this;
  }

  /** What is ASCII: operators, and operands that are no numbers. */
  text(ascii: string): this {
    this.reserve(ascii.length);
    for (let i = 0; i < ascii.length; i++) this.bytes[this.length++] = ascii.charCodeAt(i);
    return this;
  }

  /** All that was written. */
  toString(): string {
    // ASCII throughout, which is UTF-8, too.
    return new TextDecoder().decode(this.bytes.subarray(0, this.length));
  }

  private digits(whole: number): void {
    let unit = 1;
    while (whole >= unit * 10) unit *= 10;
    let rest = whole;
    for (; unit >= 1; unit /= 10) {
      const digit = Math.floor(rest / unit);
      this.bytes[this.length++] = ZERO + digit;
      rest -= digit * unit;
    }
  }

  private reserve(more: number): void {
    if (this.length + more <= this.bytes.length) return;
    const larger = new Uint8Array(2 * (this.length + more));
    larger.set(this.bytes);
    this.bytes = larger;
  }
}
