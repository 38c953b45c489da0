import { type ComponentType, type LazyExoticComponent, Suspense, useState } from 'react';

export interface LazyDialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
}

interface OfProps extends LazyDialogProps {
  readonly of: LazyExoticComponent<ComponentType<LazyDialogProps>>;
}

/** A dialog whose code is loaded when it is first opened, so that a first visit does not wait for it. */
export function LazyDialog({ of: Loaded, open, onClose }: OfProps) {
  const [wanted, setWanted] = useState(open);
  if (open && !wanted) setWanted(true);
  return (
    wanted && (
      <Suspense>
        <Loaded open={open} onClose={onClose} />
      </Suspense>
    )
  );
}
