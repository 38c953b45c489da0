import { Button } from '../../../ui/button.tsx';
import { Dialog } from '../../../ui/dialog.tsx';
import { counted } from '../../../ui/plural.ts';

interface PrintDialogProps {
  /** How many different ones there are. */
  readonly pages: number;
  /** Sheets of paper, each page printed as often as it says. */
  readonly printed: number;
  /** So many are printed in one go at most. */
  readonly most: number;
  readonly open: boolean;
  readonly onClose: () => void;
  /** @param often each as often as it says, or once */
  readonly onPrint: (often: boolean) => void;
}

/** Asks how often pages are printed of which some are wanted several times. */
export function PrintDialog({ pages, printed, most, open, onClose, onPrint }: PrintDialogProps) {
  const all = counted(printed, 'sheet');
  const choose = (often: boolean) => {
    onClose();
    onPrint(often);
  };
  const tooMany = printed > most;
  return (
    <Dialog
      title="How often?"
      open={open}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>Go back</Button>
          <Button look={tooMany ? 'main' : 'plain'} onClick={() => choose(false)}>
            {pages === 1 ? 'The page once' : 'Each page once'}
          </Button>
          {!tooMany && (
            <Button look="main" onClick={() => choose(true)}>
              As often as they say
            </Button>
          )}
        </>
      }
    >
      <p>
        {pages === 1 ? 'The page says' : 'Each page says'} how often it is wanted: that is {all} of paper in
        all.
      </p>
      <p>
        {tooMany
          ? `More than ${most.toLocaleString('en')} are not printed in one go: print ${counted(pages, 'page')}, and ask for copies in the browser’s dialog.`
          : 'Print the first one alone and measure its check square before you print the rest.'}
      </p>
    </Dialog>
  );
}
