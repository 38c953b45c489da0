/** No printer is farther off by itself: beyond, it was told to shrink or enlarge the page. */
export const PRINTER_RANGE = { least: 0.9, most: 1.1 } as const;
