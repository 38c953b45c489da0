import { Button } from '../../../ui/button.tsx';
import { Dialog } from '../../../ui/dialog.tsx';

interface ManySheetsDialogProps {
  readonly sheets: number;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly onGoOn: () => void;
}

/** Asks before a file is made that takes thousands of sheets of paper: a slip of a key, more often than not. */
export function ManySheetsDialog({ sheets, open, onClose, onGoOn }: ManySheetsDialogProps) {
  const number = sheets.toLocaleString('en');
  return (
    <Dialog
      title={`${number} sheets of paper?`}
      open={open}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>Go back</Button>
          <Button
            look="main"
            onClick={() => {
              onClose();
              onGoOn();
            }}
          >
            Go on all the same
          </Button>
        </>
      }
    >
      <p>
        So many blocks take {number} sheets of paper, each page printed as often as it says. Look at the
        number of blocks again, or go on.
      </p>
    </Dialog>
  );
}
