/** Gives the maker a file. */
export function download(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Revoked in the same turn, some browsers would save nothing.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Characters that some file system refuses in names, and control characters. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are among those refused
const REFUSED = /[\\/:*?"<>|\u0000-\u001f\u007f]/g;

/** Bytes that a file name may have nearly everywhere, with room for an ending and a copy's number. */
const LONGEST_NAME = 180;

/** A file name made of a title: `The reading room, quilt.pdf`. */
export function fileName(title: string, ending: string): string {
  let name = title
    .replace(REFUSED, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^[.\s]+/, '');
  const bytes = (text: string) => new TextEncoder().encode(text).length;
  while (bytes(name) > LONGEST_NAME) name = [...name].slice(0, -1).join('');
  return `${name === '' ? 'pattern' : name.trim()}${ending}`;
}
