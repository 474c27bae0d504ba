import { expect, test } from 'vitest';
import { listSteps } from '../../../../main/operations/history/list-steps.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aYard } from '../../../builders/yard.ts';

function aDeskWithYards(count: number) {
  const desk = aDesk();
  for (let n = 1; n <= count; n += 1) mustOk(saveYard(desk, aYard({ id: `y${n}`, name: `Yard ${n}` })));
  return desk;
}

test('lists the newest first, page by page, each once', () => {
  const desk = aDeskWithYards(5);
  const pages: string[][] = [];
  let before: number | null = null;
  for (let page = 0; page < 4; page += 1) {
    const { steps, more } = listSteps(desk, { before, limit: 2 });
    pages.push(steps.map(({ words }) => ('yard' in words ? words.yard : '?')));
    before = steps.at(-1)?.id ?? null;
    if (!more) break;
  }
  expect(pages).toEqual([['Yard 5', 'Yard 4'], ['Yard 3', 'Yard 2'], ['Yard 1']]);
});

test('an undo is a line of its own, and the change it took back says so', () => {
  const desk = aDeskWithYards(2);
  mustOk(undo(desk));
  const { steps, undo: next, redo } = listSteps(desk, { before: null, limit: 10 });
  const yard2 = { did: 'save-yard', yard: 'Yard 2' };
  expect(steps).toMatchObject([
    { kind: 'undo', words: yard2, undone: false, ofStep: steps[1]?.id },
    { kind: 'change', words: yard2, undone: true },
    { kind: 'change', words: { did: 'save-yard', yard: 'Yard 1' }, undone: false },
  ]);
  expect([next?.id, redo?.id]).toEqual([steps[2]?.id, steps[1]?.id]);
  expect(steps[0]?.at).toMatch(/^\d{4}-\d\d-\d\dT/);
});
