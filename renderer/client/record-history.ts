import { useState } from 'react';
import type { RecordKind } from '../../shared/contract/history.ts';
import { ask } from './client.ts';
import { useAnswer } from './hooks.ts';

/** The history of one record, asked for once its fold is opened. */
export function useRecordHistory(record: RecordKind, id: string) {
  const [isOpen, setOpen] = useState(false);
  const answer = useAnswer(['history', record, id], () => ask.history.getRecord.query({ record, id }), isOpen);
  return { steps: answer.data, onOpen: setOpen };
}
