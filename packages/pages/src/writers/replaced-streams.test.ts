import { unzlibSync, zlibSync } from 'fflate';
import { expect, test } from 'vitest';
import { binaryString, bytesOf } from './bytes.ts';
import { withStreams } from './replaced-streams.ts';

/** A file of such objects, written in this order; numbered otherwise. */
function fileOf(objects: readonly (readonly [id: number, body: string])[]): Uint8Array {
  let text = '%PDF-1.3\n%ºß¬à\n';
  const starts = new Map<number, number>();
  for (const [id, body] of objects) {
    starts.set(id, text.length);
    text += `${id} 0 obj\n${body}\nendobj\n`;
  }
  const at = text.length;
  const ids = Array.from({ length: objects.length }, (_, i) => i + 1);
  const lines = ids.map((id) => `${`${starts.get(id)}`.padStart(10, '0')} 00000 n \n`);
  const trailer = `trailer\n<<\n/Size ${ids.length + 1}\n>>\nstartxref\n${at}\n%%EOF`;
  return bytesOf(`${text}xref\n0 ${ids.length + 1}\n0000000000 65535 f \n${lines.join('')}${trailer}`);
}

const OBJECTS = [
  [3, '<</Type /Page /Contents 4 0 R>>'],
  [4, '<<\n/Length 2\n>>\nstream\nq \nendstream'],
  [1, '<</Type /Pages>>'],
  [2, '<<\n/Length 3\n>>\nstream\nabc\nendstream'],
] as const;

test('the streams are there in place of those that were, and each object where the table says', () => {
  const content = bytesOf('0 0 m 10 10 l S\n'.repeat(100));
  const text = binaryString(withStreams(fileOf(OBJECTS), new Map([[4, zlibSync(content)]])));
  const at = Number(/startxref\n(\d+)\n%%EOF$/.exec(text)?.[1]);
  const [head, count, ...lines] = text.slice(at, text.indexOf('trailer')).trimEnd().split('\n');
  expect([head, count, lines.length]).toEqual(['xref', '0 5', 5]);
  for (const [id, body] of OBJECTS) {
    const start = Number(lines[id]!.slice(0, 10));
    if (id !== 4) {
      const object = `${id} 0 obj\n${body}\nendobj\n`;
      expect(text.slice(start, start + object.length)).toBe(object);
      continue;
    }
    const [whole, length] = /^4 0 obj\n<<\n\/Length (\d+)\n\/Filter \/FlateDecode\n>>\nstream\n/.exec(
      text.slice(start),
    )!;
    const stream = text.slice(start + whole.length, start + whole.length + Number(length));
    expect(unzlibSync(bytesOf(stream))).toEqual(content);
    const rest = text.slice(start + whole.length + stream.length);
    expect(rest.startsWith('\nendstream\nendobj\n')).toBe(true);
  }
});

test('where nothing is to be replaced the file stays as it is', () => {
  const file = fileOf(OBJECTS);
  expect(withStreams(file, new Map())).toEqual(file);
});

test('what has no such table is refused', () => {
  expect(() => withStreams(bytesOf('%PDF-1.3\nstartxref\n9\n%%EOF'), new Map())).toThrow('no table');
});
