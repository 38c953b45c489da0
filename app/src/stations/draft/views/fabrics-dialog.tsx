import { lazy, Suspense, useState } from 'react';

export interface FabricsDialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
}

const FabricsOfPattern = lazy(() => import('./fabrics-of-pattern.tsx'));

/** The dialog of the pattern's fabrics, loaded when it is first opened: it knows of cutting and of pictures. */
export function FabricsDialog({ open, onClose }: FabricsDialogProps) {
  const [wanted, setWanted] = useState(open);
  if (open && !wanted) setWanted(true);
  return (
    wanted && (
      <Suspense>
        <FabricsOfPattern open={open} onClose={onClose} />
      </Suspense>
    )
  );
}
