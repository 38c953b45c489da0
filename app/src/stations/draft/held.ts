import {
  type AdjustState,
  adjustTool,
  type Edit,
  type OutlineState,
  outlineTool,
  type Preview,
  type SplitState,
  splitTool,
  type ToolContext,
  type ToolEvent,
} from '@seamwright/drafting';
import type { Problem } from '@seamwright/geometry';

/** A tool and how far it is. */
export type Held =
  | { readonly tool: 'split'; readonly state: SplitState }
  | { readonly tool: 'adjust'; readonly state: AdjustState }
  | { readonly tool: 'outline'; readonly state: OutlineState };

export type ToolName = Held['tool'];

/** The tools as they are taken up. */
export const START: Readonly<Record<ToolName, Held>> = {
  split: { tool: 'split', state: splitTool.start },
  adjust: { tool: 'adjust', state: adjustTool.start },
  outline: { tool: 'outline', state: outlineTool.start },
};

interface Answer {
  readonly held: Held;
  readonly preview?: Preview;
  readonly edit?: Edit;
  readonly problem?: Problem;
}

/** What the tool answers to an event. */
export function step(held: Held, event: ToolEvent, context: ToolContext): Answer {
  switch (held.tool) {
    case 'split': {
      const { state, ...rest } = splitTool.step(held.state, event, context);
      return { held: { tool: held.tool, state }, ...rest };
    }
    case 'adjust': {
      const { state, ...rest } = adjustTool.step(held.state, event, context);
      return { held: { tool: held.tool, state }, ...rest };
    }
    case 'outline': {
      const { state, ...rest } = outlineTool.step(held.state, event, context);
      return { held: { tool: held.tool, state }, ...rest };
    }
  }
}

/** What the next press does, for the eye and for the ear; empty where that is plain. */
export function nextStep({ tool, state }: Held): string {
  if (tool === 'split')
    return state.kind === 'placing' ? 'One end is down. Now the other, or type a length.' : '';
  if (tool === 'adjust')
    return state.kind === 'carrying' || state.kind === 'puttingDown'
      ? 'Taken up. Put it down where it goes.'
      : '';
  if (state.kind === 'idle') return 'Put down the first corner of the new outline.';
  return state.corners.length < 3
    ? 'Put down the next corner.'
    : 'Put down the next corner, or press on the first to close.';
}
