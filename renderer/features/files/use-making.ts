import { useState } from 'react';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Result } from '../../../shared/kernel/result.ts';
import { useChange } from '../../client/hooks.ts';

/**
 * Makes a file when asked to and keeps the sentence on how that went; the last one goes when it is asked for again.
 * @param tell the sentence, once the file is where it belongs.
 */
export function useMaking<Input, Made>(
  make: (input: Input) => Promise<Result<Made, Refusal>>,
  tell: (made: Made) => string | Promise<string>,
) {
  const change = useChange(make);
  const [outcome, setOutcome] = useState<string | null>(null);
  const run = async (input: Input): Promise<void> => {
    setOutcome(null);
    const made = await change.run(input);
    if (made) setOutcome(await tell(made));
  };
  return { run, outcome, state: change.state };
}
