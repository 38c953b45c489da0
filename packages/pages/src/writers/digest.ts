/**
 * 32 hexadecimal digits that depend on nothing but the bytes: the PDF's file identifier, so that the same input
 * gives the same file. Four 32-bit FNV-1a sums from different starts; not for security.
 *
 * Source: G. Fowler, L. C. Noll, K.-P. Vo, FNV hash (offset basis and prime from memory).
 */
export function digest(parts: readonly Uint8Array[]): string {
  // Apart, not in a list: every byte of a long plan goes through here.
  let [a, b, c, d] = [0x811c9dc5, 0x811c9dc6, 0x811c9dc7, 0x811c9dc8];
  for (const part of parts)
    for (let i = 0; i < part.length; i++) {
      const byte = part[i]!;
      a = Math.imul(a ^ byte, 0x01000193);
      b = Math.imul(b ^ byte, 0x01000193);
      c = Math.imul(c ^ byte, 0x01000193);
      d = Math.imul(d ^ byte, 0x01000193);
    }
  return [a, b, c, d].map((sum) => (sum >>> 0).toString(16).padStart(8, '0')).join('');
}
