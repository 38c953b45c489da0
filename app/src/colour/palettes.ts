/** A colour with the name that a fabric of it gets. */
export interface NamedColour {
  readonly name: string;
  /** `#rrggbb` */
  readonly colour: string;
}

/** Colours that go together. */
export interface Palette {
  readonly name: string;
  readonly colours: readonly NamedColour[];
}

const palette = (
  name: string,
  ...colours: readonly (readonly [colour: string, name: string])[]
): Palette => ({
  name,
  colours: colours.map(([colour, words]) => ({ name: words, colour })),
});

/** What is seen from the reading room's window, at several hours. In each, light and dark are well apart. */
export const PALETTES: readonly Palette[] = [
  palette(
    'Harbour by day',
    ['#f6f1e3', 'Whitewash'],
    ['#a9cfdd', 'Morning sky'],
    ['#e0ab35', 'Oilskin'],
    ['#c4503a', 'Buoy red'],
    ['#2f6f94', 'Open water'],
    ['#1f3247', 'Tarred hull'],
  ),
  palette(
    'Fog',
    ['#eef0ee', 'Fog bank'],
    ['#c6cecf', 'Gull’s wing'],
    ['#9fa9a9', 'Wet stone'],
    ['#85796a', 'Driftwood'],
    ['#4f5b61', 'Mooring'],
    ['#262d33', 'Night fog'],
  ),
  palette(
    'Lamplight',
    ['#fbebcb', 'Candle'],
    ['#f0bb58', 'Lamp glow'],
    ['#c98138', 'Amber'],
    ['#8a4a2c', 'Mahogany'],
    ['#2f5548', 'Green shade'],
    ['#1a2031', 'Dusk'],
  ),
  palette(
    'Low tide',
    ['#f4e2d8', 'Shell'],
    ['#d8bf95', 'Sand'],
    ['#98a765', 'Samphire'],
    ['#a5593a', 'Rusted chain'],
    ['#46566f', 'Mussel'],
    ['#26362c', 'Sea wrack'],
  ),
  palette(
    'Regatta',
    ['#fbfaf5', 'Sail white'],
    ['#f2c62f', 'Pennant yellow'],
    ['#6fb5a4', 'Shallow water'],
    ['#cc3d2c', 'Signal red'],
    ['#2a5fa0', 'Signal blue'],
    ['#16233f', 'Navy'],
  ),
];
