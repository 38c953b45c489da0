import { lazyDialog } from '../../../ui/lazy-dialog.tsx';

/** The pattern's fabrics; it knows of cutting and of pictures. */
export const FabricsDialog = lazyDialog(
  async () => (await import('./fabrics-of-pattern.tsx')).FabricsOfPattern,
);
