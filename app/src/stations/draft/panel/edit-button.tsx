import type { Drawing } from '@seamwright/arrangement';
import { differenceOf } from '@seamwright/drafting';
import type { LucideIcon } from 'lucide-react';
import type { MouseEvent, ReactNode } from 'react';
import type { Pointed } from '../../../store/pointed.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { usePointing } from '../../../ui/use-pointing.ts';
import { type MakeEdit, make } from './make.ts';

interface EditButtonProps {
  /** The step's name in the history. */
  readonly step: string;
  readonly edit: MakeEdit;
  readonly icon?: LucideIcon;
  /** Its name where the words on it leave out what stands beside it. */
  readonly name?: string;
  readonly then?: (drawing: Drawing) => void;
  readonly children: ReactNode;
}

/**
 * Does something to the drawing. Pointed at, or with the keyboard's focus, it shows on the canvas what would be drawn and
 * what taken away. Fields round it (`data-fields`) that hold something wrong come first.
 */
export function EditButton({ step, edit, icon, name, then, children }: EditButtonProps) {
  const pointing = usePointing(() => beforehand(edit));
  const press = (event: MouseEvent<HTMLElement>) => {
    if (goToWrongField(event.currentTarget)) return;
    const result = make(step, edit);
    if (result.ok) then?.(result.value);
  };
  return (
    <Button {...pointing} {...(icon && { icon })} aria-label={name} onClick={press}>
      {children}
    </Button>
  );
}

/** What an edit would draw and take away, for the canvas; nothing of one that would be refused. */
export function beforehand(edit: MakeEdit): Pointed {
  const { drawing } = currentBlock(useWork.getState());
  const result = edit(drawing);
  return { of: drawing, ...(result.ok && differenceOf(drawing, result.value)) };
}

/** Nothing is done with the value that a field had before something was typed that it could not take. */
export function goToWrongField(beside: HTMLElement): boolean {
  const wrong = beside.closest('[data-fields]')?.querySelector<HTMLElement>('[aria-invalid="true"]');
  wrong?.focus();
  return wrong !== null && wrong !== undefined;
}
