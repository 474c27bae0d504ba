import { initTRPC, TRPCError } from '@trpc/server';
import type { z } from 'zod';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import type { Desk } from '../operations/operation.ts';
import { deskOf, type Lifecycle } from '../operations/workbook/lifecycle.ts';
import { Refused } from './refused.ts';

const t = initTRPC.context<Lifecycle>().create();

export const group = t.router;

/** A question to the open workbook: plain data comes back. */
export const query = <Input extends z.ZodType, Output>(
  input: Input,
  answer: (desk: Desk, input: z.output<Input>) => Output,
) => onDesk.input(input).query(({ ctx, input: asked }) => answer(ctx.desk, asked as z.output<Input>));

/** A question that needs nothing but the open workbook. */
export const plainQuery = <Output>(answer: (desk: Desk) => Output) => onDesk.query(({ ctx }) => answer(ctx.desk));

/** A change of the open workbook: a Result comes back. */
export const command = <Input extends z.ZodType, Value>(
  input: Input,
  change: (desk: Desk, input: z.output<Input>) => Result<Value, Refusal>,
) => onDesk.input(input).mutation(({ ctx, input: asked }) => change(ctx.desk, asked as z.output<Input>));

/** A question that can be asked while no workbook is open. */
export const lifecycleQuery = <Output>(answer: (lifecycle: Lifecycle) => Output) =>
  t.procedure.query(({ ctx }) => answer(ctx));

export const lifecycleCommand = <Input extends z.ZodType, Value>(
  input: Input,
  change: (lifecycle: Lifecycle, input: z.output<Input>) => Result<Value, Refusal>,
) => t.procedure.input(input).mutation(({ ctx, input: asked }) => change(ctx, asked as z.output<Input>));

/** Opening the demo and closing need no input. */
export const plainLifecycleCommand = <Value>(change: (lifecycle: Lifecycle) => Result<Value, Refusal>) =>
  t.procedure.mutation(({ ctx }) => change(ctx));

const onDesk = t.procedure.use(({ ctx, next }) => {
  const desk = deskOf(ctx);
  if (desk === null)
    throw new TRPCError({ code: 'PRECONDITION_FAILED', cause: new Refused({ kind: 'no-workbook-open' }) });
  return next({ ctx: { ...ctx, desk } });
});
