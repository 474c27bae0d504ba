import { shortDay } from '../day-text.ts';
import { celsiusText } from '../degrees.ts';
import type { CHANGES as EnglishChanges, ROW_WORDS as EnglishRows, history as english } from '../english/history.ts';
import type { Translation } from '../translation.ts';
import { followUps } from './follow-ups.ts';
import { lookWords } from './looks.ts';
import { losses } from './losses.ts';
import { PLACEMENT_ENDS } from './placement-ends.ts';
import { PAPER_NAMES } from './printed-papers.ts';
import { QUEEN_PLACES } from './queen-places.ts';
import { SIGHTING_WORDS } from './sightings.ts';
import { STEP_TITLES } from './step-titles.ts';

const bar = (number: number | null) => (number === null ? 'eine Leiste' : `Leiste ${number}`);
const sighting = (what: keyof typeof SIGHTING_WORDS | null) =>
  what === null ? 'eine Beobachtung' : (SIGHTING_WORDS[what]?.name ?? what);
const title = (step: keyof typeof STEP_TITLES) => `„${STEP_TITLES[step] ?? step}“`;

const TAKEN_IN: Readonly<Record<string, readonly [string, string]>> = {
  hives: ['Volk', 'Völker'],
  boxes: ['Kästchen', 'Kästchen'],
  queens: ['Königin', 'Königinnen'],
  counts: ['Serie', 'Serien'],
  weather: ['Wettertag', 'Wettertage'],
};

export const CHANGES: Translation<typeof EnglishChanges> = {
  'start-batch': ({ batch }) => `Serie ${batch} begonnen`,
  'edit-batch': ({ batch }) => `Notizen zu ${batch}`,
  'close-batch': ({ batch }) => `${batch} abgeschlossen`,
  'reopen-batch': ({ batch }) => `${batch} wieder geöffnet`,
  'remove-batch': ({ batch, queens: n, hives = [] }) =>
    `Serie ${batch} herausgenommen${hives.length === 0 ? '' : ` mit ${hives.length === 1 ? 'Volk' : 'den Völkern'} ${hives.join(', ')}`}${n === 0 ? '' : n === 1 ? ', 1 Königin bleibt' : `, ${n} Königinnen bleiben`}`,
  'print-labels': ({ batch }) => `Etiketten von ${batch} als gedruckt vermerkt`,
  'print-yard-sheet': ({ on }) => `Standzettel für ${shortDay(on, 'day-first', 'de')} als gedruckt vermerkt`,
  'print-paper': ({ paper, name, year }) => `${PAPER_NAMES[paper](name, year)} als gedruckt vermerkt`,
  'add-bar': ({ batch, bar: number }) => `${bar(number)} zu ${batch} hinzugefügt`,
  'record-bar-counts': ({ batch, bar: number }) => `Zahlen von ${batch}, ${bar(number)}`,
  'record-loss': ({ batch, stage, reason, cells }) =>
    `${batch}, ${losses.stages[stage]}: ${losses.reasons[reason]} ${cells === 0 ? 'zurückgenommen' : cells}`,
  'give-as-planned': ({ batch }) => `Zellen von ${batch} wie geplant gegeben`,
  'mark-step': ({ batch, step }) => `${batch}, ${title(step)} erledigt`,
  'unmark-step': ({ batch, step }) => `${batch}, ${title(step)} wieder offen`,
  'move-step': ({ batch, step }) => `${batch}, ${title(step)} verlegt`,
  'drop-step': ({ batch, step }) => `${batch}, ${title(step)} entfällt`,
  'take-up-step': ({ batch, step }) => `${batch}, ${title(step)} wieder aufgenommen`,
  'record-observation': ({ batch, what }) => `${batch}, ${sighting(what)}`,
  'remove-observation': ({ batch, what }) => `${batch}, doch nicht gesehen: ${sighting(what)}`,
  'set-warmth': ({ batch, celsius }) =>
    celsius === null
      ? `Verdeckelte Zellen von ${batch} im Volk`
      : `Verdeckelte Zellen von ${batch} bei ${celsiusText(celsius, 'celsius', 'de')}`,
  'save-weather': ({ on }) => `Wetter vom ${shortDay(on, 'day-first', 'de')}`,
  'save-wish': ({ forWhom }) => `Wunsch ${forWhom === null ? 'für eigene Völker' : `von ${forWhom}`}`,
  'remove-wish': ({ forWhom }) => `Wunsch ${forWhom === null ? 'für eigene Völker' : `von ${forWhom}`} herausgenommen`,
  'add-boxes': ({ boxes: codes }) => `Kästchen ${codes} hinzugefügt`,
  'place-cells': ({ batch, boxes: codes }) => `Zellen von ${batch} in ${codes}`,
  'record-look': ({ box, result, queen }) =>
    `${box} ${lookWords[result]?.name ?? result}${queen === null ? '' : `, Königin ${queen}`}`,
  'take-errand': ({ from, looks }) => `${looks === 1 ? '1 Kontrolle' : `${looks} Kontrollen`} von „${from}“ übernommen`,
  'remove-look': ({ box, on }) => `${box}, Kontrolle vom ${shortDay(on, 'day-first', 'de')} herausgenommen`,
  'end-placement': ({ box, reason }) => `${box} frei, ${PLACEMENT_ENDS[reason] ?? reason}`,
  'retire-box': ({ box }) => `${box} außer Gebrauch genommen`,
  'save-box': ({ box }) => `Angaben zu ${box}`,
  'save-yard': ({ yard }) => `Stand ${yard}`,
  'save-hive': ({ hive }) => `Volk ${hive}`,
  'set-roles': ({ hive, season }) => `Aufgabe von ${hive} ${season}`,
  'record-hive-look': ({ hive }) => `Kontrolle von ${hive}`,
  'remove-hive-look': ({ hive, on }) => `${hive}, Kontrolle vom ${shortDay(on, 'day-first', 'de')} herausgenommen`,
  'record-score': ({ hive }) => `Bewertung von ${hive}`,
  'record-test': ({ hive }) => `Test von ${hive}`,
  'record-treatment': ({ hive }) => `Behandlung von ${hive}`,
  'move-hive': ({ hive }) => `Volk ${hive} versetzt`,
  'record-feeding': ({ places, on }) => `Gefüttert am ${shortDay(on, 'day-first', 'de')}: ${places}`,
  'remove-feeding': ({ places, on }) => `Am ${shortDay(on, 'day-first', 'de')} doch nicht gefüttert: ${places}`,
  'save-queen': ({ queen }) => `Königin ${queen}`,
  'promise-queen': ({ queen, to }) => `Königin ${queen} versprochen an ${to}`,
  'take-back-promise': ({ queen, to }) => `Versprechen von Königin ${queen} an ${to} zurückgenommen`,
  'record-feedback': ({ queen }) => `Was von Königin ${queen} erzählt wurde`,
  'move-queen': ({ queen, place }) => `Königin ${queen} ${QUEEN_PLACES[place] ?? place}`,
  'plan-look': ({ box }) => `Weitere Kontrolle von ${box} geplant`,
  'answer-follow-up': ({ what, who }) => `${followUps.what?.[what] ?? what} ${who}`,
  'save-method-copy': ({ method }) => `Verfahren ${method}`,
  'save-settings': () => 'Einstellungen',
  'take-in-table': ({ what, rows }) => `Tabelle übernommen, ${rows} ${TAKEN_IN[what]?.[rows === 1 ? 0 : 1] ?? what}`,
  'take-in-workbook': ({ name }) => `Gesamtdatei von „${name}“ übernommen`,
  'begin-workbook': () => 'Das Arbeitsbuch wurde begonnen',
  'build-demo': () => 'Der erfundene Stand wurde eingerichtet',
  other: () => 'Eine Änderung',
};

const NOTE = { note: 'Notiz' };

export const ROW_WORDS: Translation<typeof EnglishRows> = {
  batch: {
    name: 'Serie',
    fields: {
      code: 'Kürzel',
      season: 'Saison',
      method: 'Verfahren',
      method_copy_id: 'Eigenes Verfahren',
      comb: 'Wabe',
      builder_type: 'Pflegevolk ist',
      breeder_id: 'Zuchtvolk',
      builder_id: 'Pflegevolk',
      anchor_step: 'Bekannter Schritt',
      anchor_on: 'Sein Tag',
      larva_age_from_hours: 'Jüngste Larve, Stunden',
      larva_age_to_hours: 'Älteste Larve, Stunden',
      sealed_celsius: 'Wärme der verdeckelten Zellen, °C',
      cells_planned: 'Geplante Zellen',
      practice: 'Zur Übung',
      lesson: 'Zu merken',
      closed_on: 'Abgeschlossen am',
      ...NOTE,
    },
  },
  bar: { name: 'Leiste', fields: { batch_id: 'Serie', number: 'Leiste' } },
  count: {
    name: 'Zählung',
    fields: { batch_id: 'Serie', bar_id: 'Leiste', stage: 'Stufe', cells: 'Zellen', counted_on: 'Gezählt am' },
  },
  step_done: {
    name: 'Schritt erledigt',
    fields: { batch_id: 'Serie', step: 'Schritt', done_on: 'Erledigt am', ...NOTE },
  },
  step_move: {
    name: 'Schritt verlegt',
    fields: { batch_id: 'Serie', step: 'Schritt', moved_to: 'Verlegt auf', reason: 'Grund' },
  },
  step_drop: {
    name: 'Schritt, der entfällt',
    fields: { batch_id: 'Serie', step: 'Schritt', dropped_on: 'Gesagt am', reason: 'Grund' },
  },
  loss: {
    name: 'Verlust',
    fields: { batch_id: 'Serie', stage: 'Stufe', reason: 'Grund', cells: 'Zellen' },
  },
  observation: {
    name: 'Gesehen',
    fields: {
      batch_id: 'Serie',
      what: 'Was',
      seen_on: 'Gesehen am',
      from_hours: 'Jüngste, Stunden',
      to_hours: 'Älteste, Stunden',
      ...NOTE,
    },
  },
  mating_box: {
    name: 'Kästchen',
    fields: {
      code: 'Kürzel',
      yard_id: 'Stand',
      row: 'Reihe',
      walk_order: 'Platz im Rundgang',
      box_type: 'Bauart',
      retired_on: 'Außer Gebrauch seit',
      ...NOTE,
    },
  },
  placement: {
    name: 'Zelle im Kästchen',
    fields: {
      box_id: 'Kästchen',
      batch_id: 'Serie',
      bar_id: 'Leiste',
      placed_on: 'Eingesetzt am',
      ended_on: 'Frei seit',
      end_reason: 'Weil',
    },
  },
  box_look: {
    name: 'Kontrolle',
    fields: {
      box_id: 'Kästchen',
      placement_id: 'Zelle von',
      looked_on: 'Tag',
      result: 'Ergebnis',
      strength: 'Stärke',
      food: 'Futter',
      ...NOTE,
    },
  },
  queen: {
    name: 'Königin',
    fields: {
      number: 'Nummer',
      born_in: 'Geboren',
      placement_id: 'Zelle von',
      batch_id: 'Serie',
      breeder_id: 'Zuchtvolk',
      mother_id: 'Mutter',
      mother_line: 'Mutterlinie',
      marked_on: 'Gezeichnet am',
      first_eggs_on: 'Erste Eier am',
      proved_on: 'Erwiesen am',
      place: 'Jetzt',
      box_id: 'Kästchen',
      colony_id: 'Volk',
      gone_to: 'An wen',
      ...NOTE,
    },
  },
  queen_move: {
    name: 'Wohin sie ging',
    fields: {
      queen_id: 'Königin',
      moved_on: 'Tag',
      place: 'Wo',
      colony_id: 'Volk',
      gone_to: 'An wen',
      way: 'Wie',
      price: 'Preis',
      ...NOTE,
    },
  },
  queen_promise: {
    name: 'Versprechen',
    fields: {
      queen_id: 'Königin',
      promised_on: 'Versprochen am',
      promised_to: 'Versprochen an',
      wanted_on: 'Bis wann',
      ...NOTE,
    },
  },
  queen_feedback: {
    name: 'Was von ihr erzählt wurde',
    fields: { queen_id: 'Königin', told_on: 'Gehört am', told_by: 'Von wem', outcome: 'Wie sie sich macht', ...NOTE },
  },
  follow_up: {
    name: 'Prüfung',
    fields: {
      what: 'Was',
      due_on: 'Fällig am',
      latest_on: 'Spätestens am',
      queen_id: 'Königin',
      box_id: 'Kästchen',
      colony_id: 'Volk',
      done_on: 'Erledigt am',
      answer: 'Antwort',
      ...NOTE,
    },
  },
  stock_score: {
    name: 'Bewertung',
    fields: { colony_id: 'Volk', trait: 'Eigenschaft', scored_on: 'Tag', score: 'Punkte', ...NOTE },
  },
  stock_test: {
    name: 'Test',
    fields: {
      colony_id: 'Volk',
      kind: 'Art',
      tested_on: 'Tag',
      counted: 'Gezählt',
      out_of: 'Von',
      hours: 'Stunden',
      ...NOTE,
    },
  },
  feeding: {
    name: 'Fütterung',
    fields: {
      colony_id: 'Volk',
      box_id: 'Kästchen',
      fed_on: 'Tag',
      feed: 'Futter',
      own_feed: 'Was es ist',
      litres: 'Liter',
      kilograms: 'Kilogramm',
      ...NOTE,
    },
  },
  treatment: {
    name: 'Behandlung',
    fields: {
      colony_id: 'Volk',
      from_on: 'Von',
      to_on: 'Bis',
      product: 'Mittel',
      amount: 'Menge',
      reason: 'Wegen',
      paper: 'Papier',
      ...NOTE,
    },
  },
  colony_move: {
    name: 'Versetzen',
    fields: {
      colony_id: 'Volk',
      moved_on: 'Tag',
      from_yard_id: 'Von Stand',
      to_yard_id: 'Nach Stand',
      place: 'Platz',
      paper: 'Papier',
      ...NOTE,
    },
  },
  colony: {
    name: 'Volk',
    fields: {
      code: 'Kürzel',
      name: 'Name',
      yard_id: 'Stand',
      place: 'Platz',
      mother_line: 'Mutterlinie',
      ended_on: 'Beendet am',
      ...NOTE,
    },
  },
  weather_day: {
    name: 'Wetter',
    fields: {
      day: 'Tag',
      max_celsius: 'Höchsttemperatur, °C',
      wind_kmh: 'Wind, km/h',
      rain: 'Regen',
      flying_hours: 'Gute Flugstunden',
    },
  },
  wish: {
    name: 'Wunsch',
    fields: {
      for_whom: 'Wer sie möchte',
      queens: 'Königinnen',
      wanted_on: 'Bis wann',
      settled_on: 'Erledigt am',
      ...NOTE,
    },
  },
  colony_role: { name: 'Aufgabe', fields: { colony_id: 'Volk', season: 'Saison', role: 'Aufgabe' } },
  hive_look: {
    name: 'Kontrolle',
    fields: {
      colony_id: 'Volk',
      looked_on: 'Tag',
      strength: 'Stärke',
      food: 'Futter',
      note: 'Was zu sehen war',
    },
  },
};

export const history: Translation<typeof english> = {
  title: 'Verlauf',
  line: 'Jede Änderung dieses Arbeitsbuchs, die letzte zuerst. Nichts wird je herausgenommen: Ein Zurücknehmen ist eine eigene Zeile.',
  empty: 'Noch wurde nichts geändert.',
  columns: { when: 'Wann', what: 'Was getan wurde', state: 'Jetzt' },
  takenBack: 'zurückgenommen',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  undoThat: (step: string) => `Rückgängig: ${step}`,
  redoThat: (step: string) => `Wiederholen: ${step}`,
  happened: (step: string) => `${step}.`,
  undone: (step: string) => `Zurückgenommen: ${step}.`,
  doneAgain: (step: string) => `Wiederholt: ${step}.`,
  undoFrom: 'Von hier an zurücknehmen',
  undoFromRead: (step: string) => `Von hier an zurücknehmen: ${step}`,
  undoneLine: (step: string) => `Zurückgenommen: ${step}`,
  doneAgainLine: (step: string) => `Wiederholt: ${step}`,
  older: 'Ältere zeigen',
  newer: 'Neuere zeigen',
  nothing: 'nichts',
  yes: 'ja',
  no: 'nein',
  ofThis: 'Verlauf',
  ofThisEmpty: 'Hier wurde nichts geändert, seit der Verlauf beginnt.',
  added: 'hinzugefügt',
  removed: 'entfernt',
  fromTo: (old: string, fresh: string) => `${old} → ${fresh}`,
};
