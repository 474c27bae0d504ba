import { Button } from '@mui/material';
import { useState } from 'react';
import type { BatchDetail } from '../../../shared/contract/batches.ts';
import { LOSS_REASONS, type LossReason, type LossStage, REASONS_AT } from '../../../shared/model/loss.ts';
import { ask } from '../../client/client.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { LossTable } from '../../components/LossTable.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';

/** What was lost at each stage, and the form that says why. Nothing lost is nothing to explain. */
export function BatchLosses({ batch }: { batch: BatchDetail }) {
  const { losses: words } = useWords();
  if (batch.losses.length === 0) return null;
  return (
    <Section title={words.title}>
      <LossTable caption={words.title} stages={batch.losses} />
      <p className="soft small" style={{ marginBlock: 8 }}>
        {words.line}
      </p>
      <LossForm batch={batch} />
    </Section>
  );
}

function LossForm({ batch }: { batch: BatchDetail }) {
  const { losses: words } = useWords();
  const stages = batch.losses.map(({ stage }) => stage);
  const [chosen, setStage] = useState<LossStage | null>(null);
  const stage = chosen !== null && stages.includes(chosen) ? chosen : (stages.at(-1) ?? 'taken');
  const [why, setReason] = useState<LossReason | null>(null);
  const reason = why !== null && REASONS_AT[stage].includes(why) ? why : (REASONS_AT[stage][0] ?? LOSS_REASONS[0]);
  const [cells, setCells] = useState('');
  const save = useChange(ask.batches.recordLoss.mutate);
  const problem = useProblemOf(save.state.refusal);
  const count = /^\d{1,3}$/.test(cells.trim()) ? Number(cells) : null;
  const submit = async () => {
    if (count === null) return;
    if (await save.run({ id: newId(), batchId: batch.id, stage, reason, cells: count })) setCells('');
  };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      <div className="row">
        <div style={{ flex: '1 1 180px' }}>
          <ChoiceField
            label={words.stage}
            value={stage}
            choices={stages.map((value) => ({ value, text: words.stages[value] }))}
            onChange={setStage}
          />
        </div>
        <div style={{ flex: '1 1 200px' }}>
          <ChoiceField
            label={words.reason}
            value={reason}
            choices={REASONS_AT[stage].map((value) => ({ value, text: words.reasons[value] }))}
            onChange={setReason}
          />
        </div>
        <div style={{ flex: '1 1 120px' }}>
          <TextField
            label={words.cells}
            numeric
            value={cells}
            onChange={setCells}
            hint={words.cellsHint}
            problem={problem('cells')}
          />
        </div>
      </div>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={save.state.busy || count === null}>
          {words.save}
        </Button>
      </div>
      <ChangeLines {...save.state} ownFields={['cells']} />
    </form>
  );
}
