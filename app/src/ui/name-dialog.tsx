import { useState } from 'react';
import { Button } from './button.tsx';
import { Dialog } from './dialog.tsx';
import { Field } from './field.tsx';

interface NameDialogProps {
  readonly title: string;
  readonly label: string;
  readonly name: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly onName: (name: string) => void;
}

/** Asks for a name. A name of nothing but spaces is refused. */
export function NameDialog(props: NameDialogProps) {
  return (
    <Dialog title={props.title} open={props.open} onClose={props.onClose}>
      <NameForm {...props} />
    </Dialog>
  );
}

function NameForm({ label, name, onClose, onName }: NameDialogProps) {
  const [typed, setTyped] = useState(name);
  const [problem, setProblem] = useState<string | null>(null);
  const commit = () => {
    const trimmed = typed.trim();
    if (trimmed === '') {
      setProblem('A name needs at least one letter or figure. Type one.');
      return;
    }
    onName(trimmed);
    onClose();
  };
  return (
    <form
      style={{ display: 'grid', gap: 16 }}
      onSubmit={(event) => {
        event.preventDefault();
        commit();
      }}
    >
      <Field label={label} problem={problem}>
        {(control) => (
          <input
            {...control}
            value={typed}
            autoComplete="off"
            onChange={(event) => setTyped(event.target.value)}
            onFocus={(event) => event.target.select()}
          />
        )}
      </Field>
      <div style={{ display: 'flex', justifyContent: 'flex-end', gap: 8 }}>
        <Button onClick={onClose}>Cancel</Button>
        <Button look="main" onClick={commit}>
          Rename
        </Button>
      </div>
    </form>
  );
}
