import type { z } from 'zod';
import type { Refusal } from '../../shared/contract/refusal.ts';

/** Carries the refusal of a plain question through tRPC. */
export class Refused extends Error {
  readonly refusal: Refusal;

  constructor(refusal: Refusal) {
    super(refusal.kind);
    this.refusal = refusal;
  }
}

/** The refusal an error of the door carries, or null when the error is our own mistake. */
export const refusalIn = (error: Error): Refusal | null =>
  error.cause instanceof Refused ? error.cause.refusal : null;

/** The first field that does not fit its schema, and what belongs there. */
export function notValid(error: z.ZodError): Refusal {
  const issue = error.issues[0];
  return {
    kind: 'not-valid',
    field: issue?.path.join('.') ?? '',
    expected: issue === undefined ? 'text' : expectedOf(issue),
  };
}

type Expected = Extract<Refusal, { readonly kind: 'not-valid' }>['expected'];

function expectedOf(issue: z.core.$ZodIssue): Expected {
  switch (issue.code) {
    case 'invalid_value':
    case 'invalid_union':
      return 'choice';
    case 'custom':
      // Days are the only fields with a check of their own (shared/model/fields.ts).
      return 'day';
    case 'too_big':
    case 'too_small':
      return ['number', 'int', 'bigint'].includes(issue.origin) ? 'number' : 'text';
    case 'not_multiple_of':
      return 'number';
    case 'invalid_type':
      if (['number', 'int', 'nan'].includes(issue.expected)) return 'number';
      return issue.expected === 'boolean' ? 'choice' : 'text';
    default:
      return 'text';
  }
}
