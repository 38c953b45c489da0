/** The words of a page in an order of their own: readers find them in different ones. */
export const wordsOf = (text: string): readonly string[] => text.split(/\s+/).filter(Boolean).sort();

/** The characters of a page, likewise: Poppler takes slanting words apart. */
export const signsOf = (text: string): string => [...text.replace(/\s+/g, '')].sort().join('');
