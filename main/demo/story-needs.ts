import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';

/** The value of a change that the story needs; a story that the rules refuse is our own mistake. */
export function need<Value>(result: Result<Value, Refusal>): Value {
  if (!result.ok) throw new Error(`The demo was refused: ${JSON.stringify(result.refusal)}`);
  return result.value;
}

export const hiveId = (code: string): string => `demo-hive-${code}`;
