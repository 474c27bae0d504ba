import { expect, test } from 'vitest';
import { handedOverBy } from '../../../../main/engine/queens/hand-over.ts';

const wish = (id: string, forWhom: string | null, queens: number, wantedOn: string) => ({
  id,
  forWhom,
  queens,
  wantedOn,
});
const to = (name: string, on: string) => ({ to: name, on });

test('queens that went to a name fill its wishes in the order of their days', () => {
  const wishes = [wish('july', 'Club', 4, '2026-07-01'), wish('june', 'Club', 2, '2026-06-01')];
  const gone = ['2026-05-30', '2026-06-02', '2026-06-02'].map((on) => to('Club', on));
  expect(Object.fromEntries(handedOverBy(wishes, gone))).toEqual({ june: 2, july: 1 });
});

test('a name is the same with other capitals and blanks; another year or another name is not', () => {
  const wishes = [wish('one', 'Baker  family', 3, '2026-06-01')];
  const gone = [to(' baker Family', '2026-06-03'), to('Baker family', '2025-06-03'), to('Bakers', '2026-06-03')];
  expect(handedOverBy(wishes, gone).get('one')).toBe(1);
});

test('of a wish without a name nothing is reckoned, and never more is handed over than was wanted', () => {
  const wishes = [wish('own', null, 3, '2026-06-01'), wish('two', 'Club', 2, '2026-06-01')];
  const handedOver = handedOverBy(
    wishes,
    Array.from({ length: 5 }, () => to('Club', '2026-06-03')),
  );
  expect(handedOver.has('own')).toBe(false);
  expect(handedOver.get('two')).toBe(2);
});
