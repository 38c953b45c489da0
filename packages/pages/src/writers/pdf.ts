import type { jsPDF } from 'jspdf';
import type { OutlineEntry, PagePlan, Weight } from '../marks/model.ts';
import type { Progress } from '../progress.ts';
import { binaryString } from './bytes.ts';
import { digest } from './digest.ts';
import type { PageFonts } from './fonts.ts';
import { DECIMALS } from './operators.ts';
import { pageContent } from './page-content.ts';
import { printable } from './printable.ts';
import { withStreams } from './replaced-streams.ts';
import { subsetFont } from './subset-font.ts';
import { type SetCharacter, Typesetter } from './typesetter.ts';

/** The day is of no interest, and a real one would make every file different. */
const CREATED = "D:20240101000000+00'00'";

/**
 * The plan as a PDF file: true size, fonts embedded as subsets, same bytes for the same input.
 *
 * The viewer is asked not to scale, to print on one side (the fabric lies on the blank one) and to pick the paper
 * by the page's size; some viewers do not listen, which is what the check squares are for. Characters that the
 * fonts lack are replaced as {@link printable} says.
 *
 * Long plans say through `report` how many sheets are written.
 *
 * The library makes the document, with its fonts; what stands on the pages is written by {@link pageContent}, compressed and put into
 * the file: through the library it takes several times as long. It is loaded here and only here, when it is first needed, so that it stays out
 * of a first page load.
 */
export async function writePdf(plan: PagePlan, fonts: PageFonts, report?: Progress): Promise<Uint8Array> {
  const [{ jsPDF }, { zlibSync }] = await Promise.all([import('jspdf'), import('fflate')]);
  const { plan: setPlan } = printable(plan, fonts);
  const { paper } = plan;
  const orientation = paper.width > paper.height ? 'landscape' : 'portrait';
  // The list that the library goes by, as it stands when it writes an object.
  const filters: string[] = [];
  const doc = new jsPDF({
    unit: 'pt',
    // Numbers, not names: "a4" writes 595.28 × 841.89.
    format: [paper.width, paper.height],
    // Else the library would swap the two.
    orientation,
    filters,
    putOnlyUsedFonts: true,
    precision: DECIMALS,
  });
  // Of pages it writes what is then replaced; to compress that, too, takes an eighth of the time.
  doc.internal.events.subscribe('postPutPages', () => filters.push('FlateEncode'));
  doc.setCreationDate(CREATED);
  doc.setProperties({ title: plan.title, creator: 'Seamwright' });
  doc.setLanguage('en');
  doc.setDisplayMode('fullpage', 'single', 'UseOutlines');
  doc.viewerPreferences({
    PrintScaling: 'None',
    DisplayDocTitle: true,
    PickTrayByPDFSize: true,
    Duplex: 'Simplex',
  });
  const characters = charactersOf(setPlan);
  for (const weight of ['regular', 'semibold'] as const) {
    // The library takes files so, too, and this form needs no base64.
    doc.addFileToVFS(`${weight}.ttf`, binaryString(subsetFont(fonts[weight], characters[weight])));
    doc.addFont(`${weight}.ttf`, 'sans', weight);
  }
  const typesetter = new Typesetter(fonts, (character, weight) => setBy(doc, character, weight));
  const contents = setPlan.sheets.map(({ marks }, i) => {
    report?.(i, setPlan.sheets.length, 'writing');
    if (i > 0) doc.addPage([paper.width, paper.height], orientation);
    // What the library writes on every page at once.
    streamOf(doc).length = 0;
    return zlibSync(pageContent(marks, paper.height, typesetter));
  });
  addOutline(doc, null, plan.outline);
  const about = new TextEncoder().encode(JSON.stringify([plan.title, paper, plan.outline]));
  doc.setFileId(digest([about, ...contents]));
  const bare = new Uint8Array(doc.output('arraybuffer'));
  return withStreams(bare, new Map(contents.map((content, i) => [contentsIdOf(doc, i + 1), content])));
}

/** All that is written on the sheets, in each font, and what a page is begun with. */
function charactersOf({ sheets }: PagePlan): Readonly<Record<Weight, string>> {
  const texts = { regular: new Set([' ']), semibold: new Set([' ']) };
  for (const { marks } of sheets)
    for (const mark of marks) if (mark.kind === 'text') texts[mark.weight].add(mark.content);
  return { regular: [...texts.regular].join(''), semibold: [...texts.semibold].join('') };
}

/** The operators of the page that was added last, as the library keeps them until the file is made. */
function streamOf(doc: jsPDF): string[] {
  // Its declarations have them as numbers.
  const pages = doc.internal.pages as unknown as readonly string[][];
  return pages.at(-1)!;
}

/** The number of the object that holds the operators of a page, once the file is made. */
function contentsIdOf(doc: jsPDF, page: number): number {
  // Its declarations leave it out.
  const { contentsObjId } = doc.getPageInfo(page).pageContext as { readonly contentsObjId?: number };
  if (contentsObjId === undefined) throw new RangeError(`Page ${page} has no content`);
  return contentsObjId;
}

/**
 * Lets the library set a character, so that it embeds the font with its glyph, reads off how it was written, and takes it from the page
 * again.
 */
function setBy(doc: jsPDF, character: string, weight: Weight): SetCharacter {
  doc.setFont('sans', weight);
  doc.text(character, 0, 0);
  const written = streamOf(doc).pop() ?? '';
  const [, font, code] = /\/(\S+) [^<]*<([0-9a-f]+)> Tj/.exec(written) ?? [];
  if (font === undefined || code === undefined)
    throw new RangeError(`“${character}” cannot be set in ${weight}`);
  return { font, code };
}

function addOutline(doc: jsPDF, parent: unknown, entries: readonly OutlineEntry[]): void {
  for (const entry of entries) {
    const item = doc.outline.add(parent as never, entry.title, { pageNumber: entry.sheet + 1 });
    addOutline(doc, item, entry.children);
  }
}
