/**
 * 32 hexadecimal digits that depend on nothing but the texts: the PDF's file identifier, so that the same input
 * gives the same bytes. Four 32-bit FNV-1a sums from different starts; not for security.
 *
 * Source: G. Fowler, L. C. Noll, K.-P. Vo, FNV hash (offset basis and prime from memory).
 */
export function digest(texts: readonly string[]): string {
  // Apart, not in a list: every character of a long plan goes through here.
  let [a, b, c, d] = [0x811c9dc5, 0x811c9dc6, 0x811c9dc7, 0x811c9dc8];
  for (const text of texts)
    for (let i = 0; i < text.length; i++) {
      // Whole units: nearly all fit in a byte.
      const unit = text.charCodeAt(i);
      a = Math.imul(a ^ unit, 0x01000193);
      b = Math.imul(b ^ unit, 0x01000193);
      c = Math.imul(c ^ unit, 0x01000193);
      d = Math.imul(d ^ unit, 0x01000193);
    }
  return [a, b, c, d].map((sum) => (sum >>> 0).toString(16).padStart(8, '0')).join('');
}
