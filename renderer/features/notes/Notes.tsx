import { useState } from 'react';
import type { NoteLine, NotesFound } from '../../../shared/contract/notes.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { Page } from '../../components/Page.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useWords } from '../../components/words.ts';

/** Words in everything that was noted, the newest first. */
export function Notes({ text }: { text: string }) {
  const { notes: words } = useWords();
  const [typed, setTyped] = useState(text);
  const asked = typed.trim().slice(0, 80);
  const found = useAnswer(['notes', asked], () => ask.notes.listNotes.query({ text: asked }), asked !== '');
  return (
    <Page title={words.title}>
      <div style={{ maxWidth: 420, marginBottom: 18 }}>
        <TextField label={words.word} value={typed} onChange={setTyped} hint={words.hint} />
      </div>
      {asked === '' ? <p className="soft">{words.ask}</p> : null}
      {asked !== '' && found.data ? <Found found={found.data} /> : null}
    </Page>
  );
}

function Found({ found: { notes, total } }: { found: NotesFound }) {
  const { notes: words } = useWords();
  const days = useDays();
  const { columns } = words;
  return (
    <>
      <p role="status" style={{ marginBottom: 10 }}>
        {notes.length < total ? words.shown(notes.length, total) : words.found(total)}
      </p>
      {notes.length === 0 ? null : (
        <DataTable
          caption={words.title}
          rows={notes.map((note, index) => ({ ...note, key: String(index) }))}
          rowKey={(note) => note.key}
          columns={[
            { key: 'about', title: columns.about, head: true, cell: (note) => <AboutLink note={note} /> },
            {
              key: 'day',
              title: columns.day,
              cell: (note) => <span className="nowrap">{note.on === null ? words.noDay : days.dated(note.on)}</span>,
            },
            {
              key: 'kind',
              title: columns.kind,
              cell: (note) => <span className="soft">{words.kinds[note.kind]}</span>,
            },
            { key: 'text', title: columns.text, cell: (note) => note.text },
          ]}
        />
      )}
    </>
  );
}

const ADDRESSES = { batch: '#/batches/', hive: '#/hives/', queen: '#/queens/', box: '#/boxes?box=' } as const;

function AboutLink({ note: { about, name } }: { note: NoteLine }) {
  if (about === null) return name;
  return (
    <a className="nowrap" href={`${ADDRESSES[about.kind]}${about.id}`}>
      {name}
    </a>
  );
}
