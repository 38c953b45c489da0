import { useMemo } from 'react';
import type { Look, Place } from './paint-patches.ts';
import { useTheme } from './theme.ts';
import { useFlip, useScale } from './view-context.ts';

/** How the block is shown at the moment, the same object for as long as nothing of it changes. */
export function useLook(place: Place): Look {
  const theme = useTheme();
  const scale = useScale();
  const flip = useFlip();
  return useMemo(() => ({ theme, scale, flip, place }), [theme, scale, flip, place]);
}
