import { type PagePlan, type Printable, printable } from '@seamwright/pages';
import { useEffect, useState } from 'react';
import { warn } from '../../store/notices.ts';
import { pageFonts } from './page-fonts.ts';

/** What can be printed; `isBefore`: of the sheets that were there before, while those that are asked for are being set. */
export type Ready = Printable & { readonly isBefore: boolean };

/** The plan as it can be printed with the pages' fonts; null until they are there. */
export function usePrintable(plan: PagePlan | null): Ready | null {
  const [ready, setReady] = useState<{ readonly of: PagePlan; readonly printable: Printable } | null>(null);
  useEffect(() => {
    if (plan === null) {
      setReady(null);
      return;
    }
    let wanted = true;
    pageFonts().then(
      (fonts) => wanted && setReady({ of: plan, printable: printable(plan, fonts) }),
      () => warn('The fonts of the pages could not be loaded. Reload the page; the pattern is kept.'),
    );
    return () => {
      wanted = false;
    };
  }, [plan]);
  // While new sheets are set, the ones before stay on the screen: nothing jumps.
  return plan === null || ready === null ? null : { ...ready.printable, isBefore: ready.of !== plan };
}
