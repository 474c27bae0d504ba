import type { CopyPurpose } from '../../contract/copies.ts';
import type { ReadOnlyReason, RiskyPlace } from '../../contract/workbook.ts';

const PURPOSES: Readonly<Record<CopyPurpose, string>> = {
  'by-hand': 'made by you',
  timer: 'while you worked',
  close: 'on closing',
  'before-format': 'before an update',
  'before-import': 'before taking in a table',
  'before-restore': 'before going back',
};

const READ_ONLY: Readonly<Record<ReadOnlyReason, string>> = {
  copy: 'This is a safety copy. Nothing can be saved in it.',
  newer:
    'This workbook was made by a newer version of the program, so it is shown for reading only and nothing in it is changed. Get the newer program to write in it.',
  older:
    'This workbook is of an older format and lies where nothing can be written, so a copy of it is shown for reading only. Copy the file to your documents and open it there to write in it.',
  place:
    'This file or its folder may not be written to, so the workbook is shown for reading only. Copy the file to your documents and open it there to write in it.',
  'two-names':
    'This file has a second name in another folder, so the workbook is shown for reading only: what is saved under one name could be lost under the other. Remove one of the two names, then open it again.',
  'open-elsewhere':
    'This workbook is open in another window or program, so you see it as it was saved when you looked. Nothing can be changed here.',
};

const RISKY: Readonly<Record<RiskyPlace['kind'], (sign: string) => string>> = {
  synced: (sign) =>
    `This workbook lies in a folder that another program keeps in step between computers (${sign}). Have it open on one computer at a time, and let that program finish before you open it on another. Safer: keep the workbook in your documents and make that folder its second place for safety copies.`,
  network: (sign) =>
    `This workbook lies on another computer (${sign}). If the connection breaks while you type, what you saved last may be lost. Safer: keep the workbook on this computer, and make the other one its second place for safety copies.`,
};

const WAYS_ON = (moment: string | null): string =>
  moment === null
    ? 'There is no safety copy to compare it with. Save the workbook on another drive, and check what you typed last.'
    : `Look into the safety copy of ${moment} before you type on, and go back to it if more is right there. No old copy is removed until you say go on.`;

export const copies = {
  title: 'Safety copies',
  line: 'A copy is made when you close a changed workbook, every half hour while you work, and before anything that could go wrong. Each is compared with the workbook row for row.',
  keptIn: (folder: string) => `They are kept in ${folder}.`,
  none: 'There is no safety copy yet.',
  make: 'Make one now',
  made: (moment: string) => `A copy was made and compared, ${moment}.`,
  columns: {
    at: 'Made',
    why: 'Why',
    hives: 'Hives',
    batches: 'Batches',
    looks: 'Looks',
    queens: 'Queens',
    checked: 'Checked',
    place: 'Where',
    acts: 'To do',
  },
  purposes: PURPOSES,
  checked: 'yes',
  notChecked: 'no',
  unknown: 'not known',
  places: { here: 'this computer', second: 'second place', both: 'both places' },
  look: 'Look inside',
  lookAt: (moment: string) => `Look inside the copy of ${moment}`,
  goBack: 'Go back to this one',
  goBackTo: (moment: string) => `Go back to the copy of ${moment}`,
  sure: (moment: string) =>
    `The workbook will be as it was on ${moment}. As it is now, it stays beside it under a name with today’s date, and as one more safety copy. Nothing is removed.`,
  sureMissing: (moment: string) => `The copy of ${moment} becomes your workbook again, in this folder:`,
  folder: 'Folder',
  yes: 'Go back',
  no: 'Leave it as it is',
  backAt: (keptAs: string) => `You are back. The workbook as it was until now is kept as ${keptAs}.`,
  back: 'You are back.',
  hold: {
    restored:
      'You went back to a copy. Until you say go on, no old copy is removed, so that you can still choose another one.',
    harmed:
      'The file was found damaged or changed. Until you say go on, no old copy is removed, so that you can look for what is missing.',
    'counts-fell':
      'The latest copy holds much less than the one before. Until you say go on, no old copy is removed. Look into the copy before, if you did not mean to delete so much.',
  },
  goOn: 'Go on as usual',
  second: {
    title: 'A second place',
    line: 'A stick or another drive, so that a broken or lost computer does not take the copies with it. The newest copy goes there each time it is plugged in.',
    folder: 'Folder of the second place',
    choose: 'Choose a folder…',
    set: 'Use this folder',
    unset: 'No second place',
    none: 'None is chosen.',
    newest: (moment: string) => `The newest copy there is of ${moment}.`,
    old: (moment: string, days: number) =>
      `The newest copy there is of ${moment}, ${days} days old. Plug the drive in, then make a copy.`,
    empty: 'No copy lies there yet.',
    missing: 'It is not connected now. Copies go there again once it is.',
  },
  strip: (moment: string) => `You are looking into the safety copy of ${moment}. Nothing can be saved in it.`,
  leave: 'Back to my workbook',
  readOnly: READ_ONLY,
  lookWithout: 'Look at it without changing it',
  lookAgain: 'Look again',
  openToWrite: 'Open it to write',
  risky: (place: RiskyPlace) => RISKY[place.kind](place.sign),
  understood: 'I understand',
  harm: {
    damaged: (moment: string | null) => `This workbook opened, and part of the file is damaged. ${WAYS_ON(moment)}`,
    changed: (moment: string | null) =>
      `Something in this file is not what it was when you closed it last: the drive lost it, or another program changed it. ${WAYS_ON(moment)}`,
    see: 'See the safety copies',
  },
  trouble: 'Not saved',
  elsewhere: {
    offer: 'Save the workbook elsewhere…',
    line: 'All that is saved goes into a new file in this folder, and the program goes on there. What is typed on the page stays; save it again afterwards.',
    folder: 'Folder, on another drive if you can',
    choose: 'Choose a folder…',
    save: 'Save it there',
    saved: (file: string) => `The workbook is now ${file}. Save again what is on the page.`,
    understood: 'Good',
  },
  notOpened: (name: string) => `Your workbook “${name}” could not be opened.`,
  comeBack: 'You can open another one, or go back to one of the safety copies below.',
} as const;
