import { initTRPC, TRPCError } from '@trpc/server';
import type { z } from 'zod';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { type Result, refuse } from '../../shared/kernel/result.ts';
import type { Desk } from '../operations/operation.ts';
import { deskOf, type Lifecycle } from '../operations/workbook/lifecycle.ts';
import { notValid, Refused } from './refused.ts';

const t = initTRPC.context<Lifecycle>().create();

export const group = t.router;

type Answer<Value> = Result<Value, Refusal> | Promise<Result<Value, Refusal>>;

/** A question to the open workbook that needs no input: plain data comes back. */
export const plainQuery = <Output>(answer: (desk: Desk) => Output | Promise<Output>) =>
  t.procedure.query(({ ctx }) => answer(openDesk(ctx)));

/** A question to the open workbook: plain data comes back. */
export const query = <Input extends z.ZodType, Output>(
  input: Input,
  answer: (desk: Desk, input: z.output<Input>) => Output | Promise<Output>,
) => t.procedure.input(unchecked(input)).query(({ ctx, input: raw }) => answer(openDesk(ctx), valid(input, raw)));

/** A question whose input may be refused, such as a preview of what is being typed: a Result comes back. */
export const resultQuery = <Input extends z.ZodType, Value>(
  input: Input,
  answer: (desk: Desk, input: z.output<Input>) => Answer<Value>,
) => t.procedure.input(unchecked(input)).query(({ ctx, input: raw }) => onDesk(ctx, input, raw, answer));

/** A change of the open workbook: a Result comes back, for some (drawing a paper) after a while. */
export const command = <Input extends z.ZodType, Value>(
  input: Input,
  change: (desk: Desk, input: z.output<Input>) => Answer<Value>,
) => t.procedure.input(unchecked(input)).mutation(({ ctx, input: raw }) => onDesk(ctx, input, raw, change));

/** A change of the open workbook that needs no input. */
export const plainCommand = <Value>(change: (desk: Desk) => Result<Value, Refusal>) =>
  t.procedure.mutation(({ ctx }): Result<Value, Refusal> => {
    const desk = deskOf(ctx);
    return desk === null ? refuse({ kind: 'no-workbook-open' }) : change(desk);
  });

/** A question that can be asked while no workbook is open. */
export const lifecycleQuery = <Output>(answer: (lifecycle: Lifecycle) => Output) =>
  t.procedure.query(({ ctx }) => answer(ctx));

/** Opens or begins a workbook. */
export const lifecycleCommand = <Input extends z.ZodType, Value>(
  input: Input,
  change: (lifecycle: Lifecycle, input: z.output<Input>) => Result<Value, Refusal>,
) =>
  t.procedure.input(unchecked(input)).mutation(({ ctx, input: raw }): Result<Value, Refusal> => {
    const parsed = input.safeParse(raw);
    return parsed.success ? change(ctx, parsed.data) : refuse(notValid(parsed.error));
  });

/** Opening the demo, setting the practice workbook back and closing need no input. */
export const plainLifecycleCommand = <Value>(change: (lifecycle: Lifecycle) => Result<Value, Refusal>) =>
  t.procedure.mutation(({ ctx }) => change(ctx));

/** Gives a procedure the type of its input; checked further in, where a misfit can be answered by a refusal. */
const unchecked =
  <Input extends z.ZodType>(_input: Input) =>
  (raw: unknown): z.input<Input> =>
    raw as z.input<Input>;

function onDesk<Input extends z.ZodType, Value>(
  lifecycle: Lifecycle,
  input: Input,
  raw: unknown,
  work: (desk: Desk, input: z.output<Input>) => Answer<Value>,
): Answer<Value> {
  const desk = deskOf(lifecycle);
  if (desk === null) return refuse({ kind: 'no-workbook-open' });
  const parsed = input.safeParse(raw);
  return parsed.success ? work(desk, parsed.data) : refuse(notValid(parsed.error));
}

function openDesk(lifecycle: Lifecycle): Desk {
  const desk = deskOf(lifecycle);
  if (desk === null) throw refused('PRECONDITION_FAILED', { kind: 'no-workbook-open' });
  return desk;
}

function valid<Input extends z.ZodType>(input: Input, raw: unknown): z.output<Input> {
  const parsed = input.safeParse(raw);
  if (!parsed.success) throw refused('BAD_REQUEST', notValid(parsed.error));
  return parsed.data;
}

/** A plain question has no Result to put a refusal in, so it travels in the error. */
const refused = (code: 'PRECONDITION_FAILED' | 'BAD_REQUEST', refusal: Refusal): TRPCError =>
  new TRPCError({ code, message: refusal.kind, cause: new Refused(refusal) });
