import { fullDay, paperDay } from '../../shared/text/day-text.ts';
import { flowingPaper } from './flowing-paper.ts';
import type { Handout, HandoutRow } from './timetable-frame.ts';

/** What stands in for a day or number that the class fills in. */
const GAP = '________';

/** The timetable in large print: the same rows upright on the page, tagged for reading aloud, without the picture of days. */
export async function largeTimetablePdf(handout: Handout): Promise<{ readonly bytes: Buffer; readonly pages: number }> {
  const { words, variant, dateOrder } = handout;
  const { handout: said, classPapers, yardSheet, language } = words;
  const title = said.title(handout.method);
  const page = flowingPaper({
    title,
    paper: handout.paper,
    large: true,
    foot: classPapers.foot,
    page: said.page,
    madeAt: handout.madeAt,
    language,
  });
  page.heading(title, 'H1');
  page.paragraph(variant === 'dates' ? said.start(fullDay(handout.larvaeGivenOn, dateOrder, language)) : said.noStart);
  const cells = ({ day, daysAfterLarvae, bees, title: step, what, handsOff }: HandoutRow): readonly string[] => [
    variant === 'gaps' ? GAP : String(daysAfterLarvae),
    ...(variant === 'day-numbers' ? [] : [variant === 'dates' ? paperDay(day, dateOrder, language) : GAP]),
    bees,
    handsOff ? `${yardSheet.leaveAlone}: ${step}` : step,
    what,
  ];
  page.table({
    columns: [
      { title: said.columns.number },
      ...(variant === 'day-numbers' ? [] : [{ title: said.columns.day }]),
      { title: said.columns.bees },
      { title: said.columns.step },
      { title: said.columns.what },
    ],
    rows: handout.rows.map(cells),
  });
  page.paragraph(said.caution);
  page.paragraph(said.sources(handout.sources));
  page.newPage();
  page.heading(classPapers.glossary.title, 'H2');
  page.table({
    columns: [{ title: classPapers.glossary.columns.word }, { title: classPapers.glossary.columns.meaning }],
    rows: handout.glossary.map(({ word, meaning }) => [word, meaning]),
  });
  return page.finish();
}
