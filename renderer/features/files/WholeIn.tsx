import { Button } from '@mui/material';
import { useState } from 'react';
import type { WorkbookFilePreview } from '../../../shared/contract/import.ts';
import { ask } from '../../client/client.ts';
import { type HandedFile, readHandedFile } from '../../client/handed-file.ts';
import { useChange, useResult } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { FileField } from '../../components/FileField.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useSentences, useWords } from '../../components/words.ts';

/** Takes in a file of everything that was saved here. */
export function WholeIn() {
  const { tablesIn } = useWords();
  const words = tablesIn.whole;
  const [file, setFile] = useState<HandedFile | null>(null);
  const [outcome, setOutcome] = useState<string | null>(null);
  const preview = useResult(
    ['whole-in', file?.chosen],
    () => (file ? ask.files.previewWorkbook.query({ file }) : Promise.resolve(null)),
    file !== null,
  );
  const take = useChange(ask.files.importWorkbook.mutate);
  const choose = async (chosen: File) => {
    setOutcome(null);
    setFile(await readHandedFile(chosen));
  };
  const takeIn = async () => {
    const done = file && (await take.run({ file }));
    if (!done) return;
    setOutcome(words.taken(done.added, done.changed));
    setFile(null);
  };
  return (
    <Section title={words.title}>
      <div className="stack">
        <p className="soft">{words.explain}</p>
        <FileField label={words.file} accept=".json" onChange={(chosen) => void choose(chosen)} />
        {outcome ? (
          <p className="line-good" role="status">
            {outcome}
          </p>
        ) : null}
        <ChangeLines refusal={preview.refusal} notReached={preview.notReached} />
        {file && preview.value ? (
          <>
            <WholeAsRead preview={preview.value} />
            <div className="acts">
              <Button
                variant="contained"
                disabled={preview.value.problems.length > 0 || take.state.busy}
                onClick={() => void takeIn()}
              >
                {words.take}
              </Button>
            </div>
          </>
        ) : null}
        <ChangeLines {...take.state} />
      </div>
    </Section>
  );
}

function WholeAsRead({ preview }: { preview: WorkbookFilePreview }) {
  const say = useSentences();
  const { tablesIn } = useWords();
  const words = tablesIn.whole;
  const days = useDays();
  return (
    <div role="status">
      <p>{words.what(preview.name, days.short(preview.exportedOn))}</p>
      {preview.problems.length > 0 ? (
        <>
          <p>{words.problems}</p>
          <ul>
            {preview.problems.map((problem) => (
              <li key={JSON.stringify(problem)}>{say.wholeProblem(problem)}</li>
            ))}
          </ul>
        </>
      ) : (
        <p>{words.counts(preview.added, preview.changed, preview.same)}</p>
      )}
    </div>
  );
}
