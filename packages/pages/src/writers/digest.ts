/**
 * 32 hexadecimal digits that depend on nothing but the text: the PDF's file identifier, so that the same input
 * gives the same bytes. Four 32-bit FNV-1a sums from different starts; not for security.
 *
 * Source: G. Fowler, L. C. Noll, K.-P. Vo, FNV hash (offset basis and prime from memory).
 */
export function digest(text: string): string {
  // Apart, not in a list: every character of a long plan goes through here.
  let [a, b, c, d] = [0x811c9dc5, 0x811c9dc6, 0x811c9dc7, 0x811c9dc8];
  const mix = (sum: number, byte: number) => Math.imul(sum ^ byte, 0x01000193);
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    const low = unit & 0xff;
    const high = unit >> 8;
    a = mix(mix(a, low), high);
    b = mix(mix(b, low), high);
    c = mix(mix(c, low), high);
    d = mix(mix(d, low), high);
  }
  return [a, b, c, d].map((sum) => (sum >>> 0).toString(16).padStart(8, '0')).join('');
}
