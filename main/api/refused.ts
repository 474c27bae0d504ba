import { ZodError, type z } from 'zod';
import type { Refusal } from '../../shared/contract/refusal.ts';

/** Carries a refusal through tRPC from the places where only throwing is possible. */
export class Refused extends Error {
  readonly refusal: Refusal;

  constructor(refusal: Refusal) {
    super(refusal.kind);
    this.refusal = refusal;
  }
}

/** The refusal behind an error of the door, or null when the error is our own mistake. */
export function refusalOf(error: Error): Refusal | null {
  const { cause } = error;
  if (cause instanceof Refused) return cause.refusal;
  if (cause instanceof ZodError) return notValid(cause);
  return null;
}

/** The first field that does not fit its schema, and what belongs there. */
function notValid(error: ZodError): Refusal {
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
