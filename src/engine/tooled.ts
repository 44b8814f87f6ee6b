import { HALF_OVER_U, type Shape } from '../formula/outcome';
import type { DecimalMark } from '../quantity/parse';
import { formatValue } from '../quantity/format';
import type { Unit } from '../quantity/unit';
import type { Feature } from '../reference/features';
import { AS_MARKED, halfWidth, reaches, readsFeature, toolById, toolsFor, type Tool } from '../reference/tools';
import type { InputSpec } from './calculator';
import type { Choices } from './spec';
import say from './words/en';

/** The features of an input under these options; undefined where it does not say. */
export function featuresOf({ feature }: InputSpec, choices: Choices): readonly Feature[] | undefined {
  if (feature === undefined) return undefined;
  if (typeof feature === 'string') return [feature];
  if (!('choice' in feature)) return feature;
  const chosen = feature.of[choices[feature.choice] ?? ''];
  return chosen === undefined ? Object.values(feature.of) : [chosen];
}

/** Tools that read an input under these options, coarsest first. */
export const toolsOf = (spec: InputSpec, choices: Choices): readonly Tool[] =>
  spec.measure.kind.whole ? [] : toolsFor(spec.measure.kind.id, featuresOf(spec, choices));

/** The tool that an input is usually read with under these options: its own, or where that reads another feature, the finest that fits. */
export function usualTool(spec: InputSpec, choices: Choices): Tool | undefined {
  const fit = toolsOf(spec, choices);
  if (spec.tool === undefined) return undefined;
  return fit.find((tool) => tool.id === spec.tool) ?? fit.at(-1);
}

/** How far the truth may lie from a reading, SI, and how its probability is spread. */
export interface Doubt {
  readonly half: number;
  readonly shape: Exclude<Shape, 'normal'>;
}

/** The doubt of a value read with a tool: twice over where it is the difference of two readings. SI. */
export function doubtWith(tool: Tool, spec: InputSpec, value: number, choices: Choices): Doubt {
  const half = halfWidth(tool, value, featuresOf(spec, choices));
  return spec.difference ? { half: 2 * half, shape: 'triangular' } : { half, shape: 'rectangular' };
}

/** The shape of a doubt that is known by its half-width alone: that of the tool where the tool gave it. SI. */
export function shapeOf(
  spec: InputSpec,
  toolId: string,
  value: number,
  half: number,
  choices: Choices,
): Doubt['shape'] {
  const tool = spec.difference ? toolById(toolId) : undefined;
  if (tool?.kind !== spec.measure.kind.id) return 'rectangular';
  const doubt = doubtWith(tool, spec, value, choices);
  return Math.abs(doubt.half - half) <= 1e-9 * half ? doubt.shape : 'rectangular';
}

/** Standard uncertainty of a doubt with ends (JCGM 100, 4.3.7 and 4.3.9). */
export const standard = (half: number, shape: Doubt['shape'] = 'rectangular'): number => half / HALF_OVER_U[shape];

/** What is to be said of a value that the tool named for it cannot have read; undefined where it can. */
export function beyondTool(
  toolId: string,
  spec: InputSpec,
  value: number,
  choices: Choices,
  unit: Unit,
  mark: DecimalMark,
): string | undefined {
  const tool = toolId === AS_MARKED ? undefined : toolById(toolId);
  if (tool?.kind !== spec.measure.kind.id) return undefined;
  const features = featuresOf(spec, choices);
  const others = toolsOf(spec, choices).filter((one) => one !== tool && reaches(one, value));
  const names = others.map((one) => one.name);
  if (features && !readsFeature(tool, features)) return say.doesNotRead(tool.name, names);
  if (reaches(tool, value)) return undefined;
  const [least, most] = tool.reach.map((end) => formatValue(end, 0, unit, { mark }));
  return say.beyondReach(tool.name, least ?? '', most ?? '', names);
}
