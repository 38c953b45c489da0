import { type ComponentType, lazy, Suspense, useState } from 'react';

interface LazyDialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
}

/** A dialog whose code is loaded when it is first opened, so that a first visit does not wait for it. */
export function lazyDialog(
  load: () => Promise<ComponentType<LazyDialogProps>>,
): ComponentType<LazyDialogProps> {
  const Loaded = lazy(async () => ({ default: await load() }));
  return function LazyDialog({ open, onClose }) {
    const [wanted, setWanted] = useState(open);
    if (open && !wanted) setWanted(true);
    return (
      wanted && (
        <Suspense>
          <Loaded open={open} onClose={onClose} />
        </Suspense>
      )
    );
  };
}
