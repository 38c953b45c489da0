import {
  type Arrangement,
  arrange,
  carryPatches,
  type Drawing,
  type Finding,
  type PatchRecord,
} from '@seamwright/arrangement';
import { fail, type LengthUnit, ok, type Result } from '@seamwright/geometry';
import {
  type Colourway,
  type Fabric,
  looksLikeSvg,
  NO_WISHES,
  namedPatches,
  parsePattern,
  readSvgDrawing,
  resolvePins,
  type SewingWishes,
} from '@seamwright/pattern';
import { planAlternative, planAsNeeded, type SewingPlan, withRepairs } from '@seamwright/sewing';
import { nameOf, readText } from './read-file.ts';

/** One block of a file, worked out. */
export interface Drawn {
  readonly name: string;
  readonly arrangement: Arrangement;
  /** With partial seams where straight ones do not suffice. */
  readonly plan: SewingPlan;
  /** Whether the maker allows partial seams; of an SVG drawing nobody said so. */
  readonly partialSeams: boolean;
  /** What the maker gave the patches, in the order of the arrangement's. */
  readonly records: readonly PatchRecord[];
  /** Findings of the file that the drawing was read from. */
  readonly findings: readonly Finding[];
}

/** What a file holds. */
export interface Drawings {
  readonly blocks: readonly Drawn[];
  /** The pattern's title; empty for an SVG drawing. */
  readonly title: string;
  readonly unit: LengthUnit;
  /** None of an SVG drawing. */
  readonly fabrics: readonly Fabric[];
  /** None where the pattern has one choice of fabrics only. */
  readonly colourways: readonly Colourway[];
  /** What else there is to know of the file. */
  readonly notes: readonly string[];
}

/**
 * Reads a pattern file or an SVG drawing, told apart by their content.
 *
 * @param only the name (or the id) of the one block that is wanted; all when left out
 */
export async function readDrawings(path: string, only?: string): Promise<Result<Drawings>> {
  const text = await readText(path);
  if (!text.ok) return text;
  return looksLikeSvg(text.value) ? fromSvg(text.value, nameOf(path), only) : fromPattern(text.value, only);
}

function fromSvg(text: string, fileName: string, only?: string): Result<Drawings> {
  const read = readSvgDrawing(text);
  if (!read.ok) return read;
  const { drawing, name = fileName, findings } = read.value;
  if (only !== undefined && !isCalled(only, name)) return noSuchBlock(only, [name]);
  const arranged = arrange(drawing);
  if (!arranged.ok) return arranged;
  const block = { name, ...workedOut(drawing, arranged.value, [], NO_WISHES), findings };
  return ok({ blocks: [block], title: '', unit: 'in', fabrics: [], colourways: [], notes: [] });
}

function fromPattern(text: string, only?: string): Result<Drawings> {
  const parsed = parsePattern(text);
  if (!parsed.ok) return parsed;
  const { pattern, notes } = parsed.value;
  const { title, unit, fabrics = [], colourways = [] } = pattern;
  const wanted = pattern.blocks.filter(
    ({ name, id }) => only === undefined || isCalled(only, name) || only === id,
  );
  if (wanted.length === 0)
    return noSuchBlock(
      only ?? '',
      pattern.blocks.map(({ name }) => name),
    );
  const blocks: Drawn[] = [];
  for (const one of wanted) {
    const { name, drawing, patches, sewing } = one;
    const arranged = arrange(drawing);
    if (!arranged.ok) {
      const { what, where, remedy } = arranged.problem;
      return fail(what, [`block "${name}"`, where].filter((part) => part !== '').join(', '), remedy);
    }
    const records = carryPatches(patches, arranged.value, namedPatches(one));
    const block = workedOut(drawing, arranged.value, records, sewing ?? NO_WISHES);
    blocks.push({ name, ...block, findings: [] });
  }
  return ok({ blocks, title, unit, fabrics, colourways, notes });
}

/** The block sewn as the maker wants it, each finding with its repairs. */
function workedOut(
  drawing: Drawing,
  arranged: Arrangement,
  records: readonly PatchRecord[],
  wishes: SewingWishes,
): Omit<Drawn, 'name' | 'findings'> {
  const { pins } = resolvePins(wishes.pins, records);
  const planned = planAsNeeded((partialSeams) =>
    planAlternative(arranged, wishes.choice, { pins, partialSeams }, wishes.mostPatches),
  );
  const mended = (findings: readonly Finding[]): readonly Finding[] => {
    const bare = findings.filter(({ repairs }) => repairs.length === 0);
    const found = withRepairs(drawing, arranged, bare);
    return findings.map((finding) => found[bare.indexOf(finding)] ?? finding);
  };
  return {
    arrangement: { ...arranged, findings: mended(arranged.findings) },
    plan: { ...planned, findings: mended(planned.findings) },
    partialSeams: wishes.partialSeams,
    records,
  };
}

/** Capitals do not matter: names are typed by hand. */
export const isCalled = (wanted: string, name: string): boolean =>
  wanted.toLowerCase() === name.toLowerCase();

const noSuchBlock = (wanted: string, names: readonly string[]) =>
  fail(`There is no block "${wanted}"`, '', `Choose one of: ${names.join(', ')}`);
