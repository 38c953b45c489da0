import { type Arrangement, arrange, type Finding, type Repair } from '@seamwright/arrangement';
import { ok, type Result } from '@seamwright/geometry';
import type {
  CuttingChartJob,
  FoundationJob,
  PageFonts,
  PagePlan,
  Progress,
  TemplateJob,
} from '@seamwright/pages';
import { type AlternativeName, Searches, type SewingPlan } from '@seamwright/sewing';
import { expose, transfer } from 'comlink';
import { planned } from './planned.ts';
import { Practice } from './practice.ts';
import { QuickStudies } from './quick-studies.ts';
import type { RecordedQuestion, StudyAnswer, StudyQuestion } from './study.ts';

const quick = new QuickStudies();

const practice = new Practice();

/** The question that the slower answers are about. */
let subject: {
  readonly question: RecordedQuestion;
  readonly arrangement: Arrangement;
  /** What is found for one way to sew it serves the others. */
  readonly searches: Searches;
} | null = null;

const later = () => import('./later.ts');

/** What is computed off the page's thread. */
const worker = {
  /** Takes the drawing apart and plans its sewing, without looking long for the best plan. */
  study(question: StudyQuestion): StudyAnswer {
    const answer = quick.answer(question);
    practice.after(answer.arrangement?.patches.length ?? 0, () => quick.practise(question));
    return answer;
  },

  /** Takes the drawing apart again and keeps it, for the questions below. `records` are those of its patches. */
  begin(question: RecordedQuestion): void {
    const arrangement = arrange(question.drawing);
    if (!arrangement.ok) throw new Error('begin: the drawing was studied before and could be taken apart');
    subject = { question, arrangement: arrangement.value, searches: new Searches(arrangement.value) };
  },

  /** One way to sew what was begun with, the best that is found with full effort. */
  plan(name: AlternativeName): SewingPlan {
    const { question, arrangement, searches } = subject!;
    return planned(question, arrangement, name, { searches });
  },

  /** The repairs of one finding of what was begun with, each proved by solving again; best first. */
  async repairs(finding: Finding): Promise<readonly Repair[]> {
    const { repairsFor } = await later();
    const { question, arrangement } = subject!;
    return repairsFor(question.drawing, arrangement, finding);
  },

  async layOut(job: FoundationJob, report: Progress): Promise<Result<PagePlan>> {
    const { layFoundations } = await later();
    return layFoundations(job, report);
  },

  async layChart(job: CuttingChartJob): Promise<Result<PagePlan>> {
    const { layCuttingChart } = await later();
    return layCuttingChart(job);
  },

  async layTemplates(job: TemplateJob): Promise<Result<PagePlan>> {
    const { layTemplates } = await later();
    return layTemplates(job);
  },

  async pdf(plan: PagePlan, fonts: PageFonts, report: Progress): Promise<Uint8Array> {
    const { writePdf } = await later();
    const bytes = await writePdf(plan, fonts, report);
    return transfer(bytes, [bytes.buffer]);
  },

  /** Each sheet as an SVG document. */
  async svg(plan: PagePlan): Promise<readonly string[]> {
    const { writeSvg } = await later();
    return plan.sheets.map((_, index) => writeSvg(plan, index));
  },

  /** Each sheet as often as `times` says. */
  async printHtml(plan: PagePlan, fonts: PageFonts, times: readonly number[]): Promise<string> {
    const { writePrintHtml } = await later();
    return writePrintHtml(plan, fonts, times);
  },

  /** One foundation of the job as a picture, by its key. */
  async png(job: FoundationJob, key: string, perInch: number, fonts: PageFonts): Promise<Result<Uint8Array>> {
    const { drawFoundation } = await later();
    const drawn = await drawFoundation(job, key, perInch, fonts);
    return drawn.ok ? ok(transfer(drawn.value, [drawn.value.buffer])) : drawn;
  },
};

export type StudyWorker = typeof worker;
expose(worker);
