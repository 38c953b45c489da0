/** The element that shows a sheet, by the sheet's index. */
export const sheetId = (index: number): string => `sheet-${index + 1}`;

/** Brings a sheet into sight, and the keyboard to it. */
export function showSheet(index: number): void {
  const element = document.getElementById(sheetId(index));
  element?.scrollIntoView({ block: 'start', inline: 'nearest' });
  element?.focus({ preventScroll: true });
}
