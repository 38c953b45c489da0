import { fail, type LengthRange, parseLength } from '@seamwright/geometry';
import type { Call } from './call.ts';
import { badCall } from './complaint.ts';

/**
 * Reads the values of a call's options one after the other and keeps the first thing that is wrong: whoever reads asks for
 * `problem` when all is read, and uses nothing before.
 */
export class OptionReader {
  problem: ReturnType<typeof fail> | null = null;

  constructor(
    private readonly call: Call,
    private readonly command: string,
  ) {}

  /** The one FILE that the command takes; empty where there is not one. */
  oneFile(): string {
    const [file, ...others] = this.call.files;
    if (file === undefined) this.wrong('No FILE is given');
    if (others.length > 0) this.wrong('More than one FILE is given', 'Give one at a time');
    return file ?? '';
  }

  /** As it was typed. */
  text(name: string): string | undefined {
    return this.call.text(name);
  }

  has(name: string): boolean {
    return this.call.has(name);
  }

  /** Inches; a number alone is inches, too. */
  length<T>(name: string, usual: T, range?: LengthRange): number | T {
    const text = this.text(name);
    return text === undefined ? usual : this.lengthIn(name, text, range);
  }

  /** A length that is a part of an option's value. */
  lengthIn(name: string, text: string, range?: LengthRange): number {
    const read = parseLength(text, 'in', range);
    if (read.ok) return read.value;
    this.problem ??= fail(`--${name}: ${read.problem.what}`, '', read.problem.remedy);
    return Number.NaN;
  }

  count(name: string, usual: number, most?: number): number {
    const text = this.text(name);
    return text === undefined ? usual : this.countOf(name, text, most);
  }

  /** `4`, or `4,0,2`. */
  counts(name: string, usual: number, most?: number): readonly number[] {
    const texts = this.text(name)?.split(',');
    return texts?.map((text) => this.countOf(name, text.trim(), most)) ?? [usual];
  }

  private countOf(name: string, text: string, most = Number.POSITIVE_INFINITY): number {
    if (/^\d+$/.test(text) && Number(text) <= most) return Number(text);
    const bound = Number.isFinite(most) ? ` up to ${most}` : '';
    return this.wrong(`--${name} ${text} is no whole number${bound}`, 'Give one, such as 4');
  }

  number(name: string, usual: number): number {
    const text = this.text(name);
    if (text === undefined) return usual;
    if (/^\d+(\.\d+)?$/.test(text)) return Number(text);
    return this.wrong(`--${name} ${text} is no number`, 'Give one, such as 3');
  }

  /** A part of the whole, 0 where it is not given: `5%`, `5` and `5 %` are 0.05. */
  part(name: string): number {
    const text = this.text(name);
    if (text === undefined) return 0;
    const percent = /^(-?\d+(?:\.\d+)?) ?%?$/.exec(text)?.[1];
    if (percent !== undefined) return Number(percent) / 100;
    return this.wrong(`--${name} ${text} is no percentage`, 'Give one, such as 5%');
  }

  /** One of some words, in capitals or not; the first where none is given. */
  word<T extends string>(name: string, words: readonly [T, ...T[]]): T {
    const text = this.text(name)?.toLowerCase() ?? words[0];
    const found = words.find((word) => word === text);
    if (found === undefined) this.wrong(`There is no ${name} "${text}"`, `Choose ${words.join(' or ')}`);
    return found ?? words[0];
  }

  /** Keeps that something is wrong with the call. */
  wrong(what: string, remedy?: string): number {
    this.problem ??= badCall(this.command, what, remedy);
    return Number.NaN;
  }
}
