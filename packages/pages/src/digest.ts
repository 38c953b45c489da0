/**
 * 32 hexadecimal digits that depend on nothing but the text: the PDF's file identifier, so that the same input
 * gives the same bytes. Four 32-bit FNV-1a sums from different starts; not for security.
 *
 * Source: G. Fowler, L. C. Noll, K.-P. Vo, FNV hash (offset basis and prime from memory).
 */
export function digest(text: string): string {
  const sums = [0x811c9dc5, 0x811c9dc6, 0x811c9dc7, 0x811c9dc8];
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    for (let k = 0; k < sums.length; k++) {
      sums[k] = Math.imul(sums[k]! ^ (unit & 0xff), 0x01000193);
      sums[k] = Math.imul(sums[k]! ^ (unit >> 8), 0x01000193);
    }
  }
  return sums.map((sum) => (sum >>> 0).toString(16).padStart(8, '0')).join('');
}
