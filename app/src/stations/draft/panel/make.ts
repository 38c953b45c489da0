import type { Drawing } from '@seamwright/arrangement';
import { type Result, sentence } from '@seamwright/geometry';
import { change } from '../../../store/changes.ts';
import { announce } from '../../../store/notices.ts';
import { currentBlock, useWork } from '../../../store/work.ts';

/** What is done to the open block's drawing. */
export type MakeEdit = (drawing: Drawing) => Result<Drawing>;

/** Carries out an edit that was pressed for, as one step that has its name, and says so; a refusal is a notice. */
export function make(label: string, edit: MakeEdit): Result<Drawing> {
  const result = change(label, edit);
  if (result.ok) announce(label);
  return result;
}

/** The same for a value that was typed: a refusal comes back as a sentence, for beside the field. */
export function makeTyped(label: string, edit: MakeEdit): string | undefined {
  const result = edit(currentBlock(useWork.getState()).drawing);
  if (!result.ok) return sentence(result.problem);
  make(label, () => result);
  return undefined;
}
