import { Button } from '@mui/material';
import { useEffect, useRef } from 'react';
import type { BatchDetail } from '../../../shared/contract/batches.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { useFollowing } from '../../components/following.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useWords } from '../../components/words.ts';

interface BatchNotesProps {
  readonly batch: BatchDetail;
  /** The person came to close it: the lesson is where typing begins. */
  readonly focus: boolean;
}

/** Notes, the lesson, and the end of a batch. */
export function BatchNotes({ batch, focus }: BatchNotesProps) {
  const { batches: words, frame } = useWords();
  const days = useDays();
  const note = useDraft(`batch-note:${batch.id}`, batch.batch.note ?? '');
  const lesson = useDraft(`batch-lesson:${batch.id}`, batch.batch.lesson ?? '');
  const [practice, setPractice] = useFollowing(batch.practice);
  const edit = useChange(ask.batches.editBatch.mutate);
  const close = useChange(ask.batches.closeBatch.mutate);
  const reopen = useChange(ask.batches.reopenBatch.mutate);
  const lessonField = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (focus) lessonField.current?.focus();
  }, [focus]);
  const textOrNull = (text: string) => (text.trim() === '' ? null : text);
  return (
    <Section title={words.one.notes}>
      <form
        className="stack prints"
        onSubmit={(event) => {
          event.preventDefault();
          // As it is saved, so that nothing seems to wait afterwards.
          for (const draft of [note, lesson]) draft.set(draft.value.trim());
          void edit.run({
            batchId: batch.id,
            note: textOrNull(note.value),
            practice,
            lesson: textOrNull(lesson.value),
          });
        }}
      >
        <TextField label={words.one.note} value={note.value} onChange={note.set} multiline />
        <TextField label={words.one.lesson} value={lesson.value} onChange={lesson.set} inputRef={lessonField} />
        <FoundDraft found={note.found || lesson.found} />
        <label className="check">
          <input type="checkbox" checked={practice} onChange={(event) => setPractice(event.target.checked)} />
          {words.form.practice}
        </label>
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={edit.state.busy}>
            {words.one.saveNotes}
          </Button>
          {batch.batch.closedOn ? (
            <>
              <span className="soft">{words.one.closedOn(days.short(batch.batch.closedOn))}</span>
              <Button disabled={reopen.state.busy} onClick={() => void reopen.run({ batchId: batch.id })}>
                {words.one.reopenBatch}
              </Button>
            </>
          ) : (
            <Button
              onClick={() => {
                lesson.set(lesson.value.trim());
                void close.run({ batchId: batch.id, closedOn: days.today, lesson: textOrNull(lesson.value) });
              }}
            >
              {words.one.closeBatch}
            </Button>
          )}
          {edit.state.done ? (
            <span className="line-good" role="status">
              {frame.saved}
            </span>
          ) : null}
        </div>
        <ChangeLines {...edit.state} />
        <ChangeLines {...close.state} />
        <ChangeLines {...reopen.state} />
      </form>
    </Section>
  );
}
