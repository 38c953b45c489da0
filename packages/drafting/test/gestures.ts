import type { Drawing } from '@seamwright/arrangement';
import type { Problem } from '@seamwright/geometry';
import type { Outcome, Tool, ToolContext, ToolEvent } from '../src/index.ts';

/** A hand at work with a tool: keeps the state, carries out the edits, notes what happened. */
export class Hand<State> {
  state: State;
  last: Outcome<State>;
  readonly edits: string[] = [];
  readonly problems: Problem[] = [];

  constructor(
    readonly tool: Tool<State>,
    public drawing: Drawing,
    public options: Omit<ToolContext, 'drawing'> & { reach?: number } = { grid: 0 },
  ) {
    this.state = tool.start;
    this.last = { state: tool.start };
  }

  send(event: ToolEvent): this {
    const { reach: _, ...options } = this.options;
    this.last = this.tool.step(this.state, event, { ...options, drawing: this.drawing });
    this.state = this.last.state;
    if (this.last.problem !== undefined) this.problems.push(this.last.problem);
    if (this.last.edit !== undefined) {
      this.edits.push(this.last.edit.label);
      this.drawing = this.last.edit.drawing;
    }
    return this;
  }

  private point(type: 'down' | 'move' | 'up' | 'press', x: number, y: number, exact = false): this {
    return this.send({ type, at: { x, y }, reach: this.options.reach ?? 0.2, exact });
  }
  down = (x: number, y: number) => this.point('down', x, y);
  move = (x: number, y: number) => this.point('move', x, y);
  up = (x: number, y: number) => this.point('up', x, y);
  click = (x: number, y: number) => this.move(x, y).down(x, y).up(x, y);
  press = (x: number, y: number) => this.point('press', x, y, true);
  drag = (x1: number, y1: number, x2: number, y2: number) =>
    this.move(x1, y1)
      .down(x1, y1)
      .move((x1 + x2) / 2, (y1 + y2) / 2)
      .move(x2, y2)
      .up(x2, y2);
}

/** An event at a place, for scripts. */
export const at = (type: 'down' | 'move' | 'up' | 'press', x: number, y: number): ToolEvent => ({
  type,
  at: { x, y },
  reach: 0.2,
  exact: false,
});
