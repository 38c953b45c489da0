import { shortened, textWidth } from '../marks/metrics.ts';
import type { Weight } from '../marks/model.ts';

interface Look {
  readonly size: number;
  readonly weight: Weight;
}

/**
 * Names of patches in lines no wider than `width` points, broken between names. A block's name that goes before several of
 * them is said once: `Lantern A1, A2; Lighthouse B3`. It is shortened where it takes more than half a line; the patch's
 * own part, its letters and number, never is.
 */
export function patchLines(
  names: readonly string[],
  { size, weight }: Look,
  width: number,
): readonly string[] {
  const parted = names.map((name) => {
    const at = name.lastIndexOf(' ');
    return { block: name.slice(0, Math.max(at, 0)), patch: name.slice(at + 1) };
  });
  const words = parted.map(({ block, patch }, i) => {
    const isNew = block !== '' && block !== parted[i - 1]?.block;
    const next = parted[i + 1];
    const end = next === undefined ? '' : next.block === block ? ',' : ';';
    return `${isNew ? `${shortened(block, size, weight, width / 2)} ` : ''}${patch}${end}`;
  });
  const lines: string[] = [];
  for (const word of words) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)!} ${word}`;
    if (lines.length > 0 && textWidth(longer, size, weight) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
