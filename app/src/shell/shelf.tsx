import { lazy, Suspense } from 'react';
import { create } from 'zustand';

/** With the dissections themselves: most visits never take one down. */
const ShelfDialog = lazy(async () => ({ default: (await import('./shelf-dialog.tsx')).ShelfDialog }));

const useShelf = create<{ readonly open: boolean; readonly wasOpen: boolean }>()(() => ({
  open: false,
  wasOpen: false,
}));

export const openShelf = (): void => useShelf.setState({ open: true, wasOpen: true });

/** The shelf of starting points, wherever it was opened from. */
export function Shelf() {
  const { open, wasOpen } = useShelf();
  if (!wasOpen) return null;
  return (
    <Suspense fallback={null}>
      <ShelfDialog open={open} onClose={() => useShelf.setState({ open: false })} />
    </Suspense>
  );
}
