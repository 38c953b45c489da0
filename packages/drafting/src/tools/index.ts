export { type AdjustState, adjustTool, chosenIn, partsIn, restingWith } from './adjust-tool.ts';
export * from './crosshair.ts';
export * from './outline-tool.ts';
export * from './pick-at.ts';
export * from './split-tool.ts';
export type {
  Edit,
  Measure,
  Outcome,
  Pick,
  Pointing,
  Preview,
  Tool,
  ToolContext,
  ToolEvent,
} from './tool.ts';
