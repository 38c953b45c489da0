import { lazy } from 'react';
import { LazyDialog, type LazyDialogProps } from '../../../ui/lazy-dialog.tsx';

const FabricsOfPattern = lazy(async () => ({
  default: (await import('./fabrics-of-pattern.tsx')).FabricsOfPattern,
}));

/** The pattern's fabrics; it knows of cutting and of pictures. */
export const FabricsDialog = (props: LazyDialogProps) => <LazyDialog of={FabricsOfPattern} {...props} />;
