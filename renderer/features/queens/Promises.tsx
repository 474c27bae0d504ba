import { Button } from '@mui/material';
import { useState } from 'react';
import type { PromiseLine, QueenDetail } from '../../../shared/contract/queens.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { PromiseForm } from './PromiseForm.tsx';
import { isHere } from './queens-shown.ts';

/** To whom she is promised, and what became of earlier promises. Giving or selling her to that name keeps it. */
export function Promises({ line }: { line: QueenDetail }) {
  const words = useWords().queens.promise;
  const days = useDays();
  const [open, setOpen] = useState(false);
  const takeBack = useChange(ask.queens.takeBackPromise.mutate);
  const { promise, promises } = line;
  const earlier = promises.filter((one) => one.id !== promise?.id);
  return (
    <Section title={words.title}>
      {promise && !open ? <OpenPromise promise={promise} /> : null}
      {promise ? null : <p className="soft">{words.none}</p>}
      {open ? <PromiseForm line={line} promise={promise} onDone={() => setOpen(false)} /> : null}
      <div className="acts">
        {!open && (promise || isHere(line.queen.place)) ? (
          <Button variant="outlined" onClick={() => setOpen(true)}>
            {promise ? words.change : words.make}
          </Button>
        ) : null}
        {promise && !open ? (
          <Button disabled={takeBack.state.busy} onClick={() => void takeBack.run({ promiseId: promise.id })}>
            {words.takeBack}
          </Button>
        ) : null}
      </div>
      <ChangeLines {...takeBack.state} />
      {earlier.map((one) => (
        <p key={one.id} className="soft small">
          {words.told(one.promisedTo, days.dated(one.promisedOn))}: {words.standings[one.standing]}
        </p>
      ))}
    </Section>
  );
}

function OpenPromise({ promise: { promisedTo, byWhen, note } }: { promise: PromiseLine }) {
  const words = useWords().queens.promise;
  const days = useDays();
  return (
    <p style={{ marginBottom: 10 }}>
      <strong>{byWhen ? words.toBy(promisedTo, days.dated(byWhen)) : words.to(promisedTo)}</strong>
      {note ? ` · ${note}` : ''}
    </p>
  );
}
