import { binaryString, bytesOf } from './bytes.ts';

/**
 * A PDF with other streams, already compressed (Flate), in place of some of its objects. The library compresses what is on the pages by
 * way of texts, character by character, which takes longer than all the rest.
 *
 * @param file with one cross-reference table that begins with object 0 (ISO 32000-1, 7.5.4), as the library writes it
 * @param streams by the number of the object
 */
export function withStreams(file: Uint8Array, streams: ReadonlyMap<number, Uint8Array>): Uint8Array {
  const table = tableAt(file);
  const tail = binaryString(file.subarray(table));
  const [, count] = /^xref\n0 (\d+)\n/.exec(tail) ?? [];
  if (count === undefined) throw new RangeError('The file has no table of its objects');
  const entries = tail.slice(tail.indexOf(FREE), tail.indexOf('trailer')).match(/.{20}/gs) ?? [];
  const starts = entries.map((entry) => Number(entry.slice(0, 10)));
  const inOrder = starts.map((_, id) => id).sort((p, q) => starts[p]! - starts[q]!);
  const used = inOrder.filter((id) => starts[id]! > 0);
  const parts: Uint8Array[] = [file.subarray(0, starts[used[0]!])];
  let length = parts[0]!.length;
  const put = (part: Uint8Array) => {
    parts.push(part);
    length += part.length;
  };
  const moved = [...starts];
  for (const [k, id] of used.entries()) {
    moved[id] = length;
    const stream = streams.get(id);
    if (stream === undefined) {
      put(file.subarray(starts[id], starts[used[k + 1]!] ?? table));
      continue;
    }
    put(bytesOf(`${id} 0 obj\n<<\n/Length ${stream.length}\n/Filter /FlateDecode\n>>\nstream\n`));
    put(stream);
    put(bytesOf('\nendstream\nendobj\n'));
  }
  const lines = entries.map((entry, id) => `${`${moved[id]}`.padStart(10, '0')}${entry.slice(10)}`);
  const trailer = tail.slice(tail.indexOf('trailer'), tail.lastIndexOf(START));
  put(bytesOf(`xref\n0 ${count}\n${lines.join('')}${trailer}${START}${length}\n%%EOF`));
  return joined(parts, length);
}

const START = 'startxref\n';

/** The first entry of the table. */
const FREE = '0000000000 65535 f';

/** Where the table begins: it says so at its end. */
function tableAt(file: Uint8Array): number {
  const end = binaryString(file.subarray(-40));
  return Number(/startxref\n(\d+)\n/.exec(end)?.[1]);
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
