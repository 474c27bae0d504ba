import type { z } from 'zod';
import type { GetMethod, MethodView } from '../../../shared/contract/methods.ts';
import { dayChanges, ownWords } from '../../../shared/model/method-copy.ts';
import { methodDays } from '../../engine/calendar/method-days.ts';
import type { Desk } from '../operation.ts';

/** A method's days as built in and as the person's copy has them, and all copies there are. */
export function getMethod({ workbook: { tables } }: Desk, input: z.infer<typeof GetMethod>): MethodView {
  const copy = input.copyId === null ? null : tables.methodCopies.get(input.copyId);
  const method = copy?.origin ?? input.method;
  const choice = { method, comb: input.comb, builderType: 'queenless', boxType: null } as const;
  return {
    method,
    copy,
    steps: methodDays(choice, dayChanges(copy)).map(({ row, builtIn, own, changed }) => ({
      step: row.step,
      kind: row.kind,
      builtIn,
      own,
      changed,
      source: row.source,
      words: ownWords(copy, row.step),
    })),
    copies: tables.methodCopies.all(),
  };
}
