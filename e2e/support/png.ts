/** What a PNG file says of itself: its pixels, and how many of them make a metre; read chunk by chunk (PNG, third edition, W3C 2025). */
export function readPngHead(png: Buffer): { width: number; height: number; perMetre: readonly number[] } {
  let perMetre: readonly number[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at)) {
    const [type, data] = [png.toString('latin1', at + 4, at + 8), at + 8];
    if (type === 'pHYs') perMetre = [png.readUInt32BE(data), png.readUInt32BE(data + 4)];
  }
  return { width: png.readUInt32BE(16), height: png.readUInt32BE(20), perMetre };
}
