import type { ReadOnlyReason, RiskyPlace } from '../../contract/workbook.ts';
import type { copies as english } from '../english/copies.ts';
import type { Translation } from '../translation.ts';

const READ_ONLY: Readonly<Record<ReadOnlyReason, string>> = {
  copy: 'Das ist eine Sicherung. Darin kann nichts gespeichert werden.',
  newer:
    'Dieses Arbeitsbuch wurde mit einer neueren Version des Programms gemacht, darum wird es nur zum Lesen gezeigt, und nichts darin wird geändert. Besorgen Sie das neuere Programm, um darin zu schreiben.',
  older:
    'Dieses Arbeitsbuch hat ein älteres Format und liegt, wo nichts geschrieben werden kann, darum wird eine Kopie davon nur zum Lesen gezeigt. Kopieren Sie die Datei in Ihre Dokumente, und öffnen Sie sie dort, um darin zu schreiben.',
  place:
    'Diese Datei oder ihr Ordner darf nicht beschrieben werden, darum wird das Arbeitsbuch nur zum Lesen gezeigt. Kopieren Sie die Datei in Ihre Dokumente, und öffnen Sie sie dort, um darin zu schreiben.',
  'two-names':
    'Diese Datei hat einen zweiten Namen in einem anderen Ordner, darum wird das Arbeitsbuch nur zum Lesen gezeigt: Was unter dem einen Namen gespeichert wird, könnte unter dem anderen verloren gehen. Entfernen Sie einen der beiden Namen, und öffnen Sie es dann noch einmal.',
  'open-elsewhere':
    'Dieses Arbeitsbuch ist in einem anderen Fenster oder Programm geöffnet, darum sehen Sie es, wie es gespeichert war, als Sie nachsahen. Hier kann nichts geändert werden.',
};

const RISKY: Readonly<Record<RiskyPlace['kind'], (sign: string) => string>> = {
  synced: (sign) =>
    `Dieses Arbeitsbuch liegt in einem Ordner, den ein anderes Programm zwischen Rechnern abgleicht (${sign}). Öffnen Sie es immer nur auf einem Rechner, und lassen Sie jenes Programm fertig werden, bevor Sie es auf einem anderen öffnen. Sicherer: Lassen Sie das Arbeitsbuch in Ihren Dokumenten, und machen Sie jenen Ordner zum zweiten Ort für Sicherungen.`,
  network: (sign) =>
    `Dieses Arbeitsbuch liegt auf einem anderen Rechner (${sign}). Reißt die Verbindung beim Eintragen ab, kann das zuletzt Gespeicherte verloren gehen. Sicherer: Lassen Sie das Arbeitsbuch auf diesem Rechner, und machen Sie den anderen zum zweiten Ort für Sicherungen.`,
};

const WAYS_ON = (moment: string | null): string =>
  moment === null
    ? 'Es gibt keine Sicherung, mit der es sich vergleichen ließe. Speichern Sie das Arbeitsbuch auf einem anderen Laufwerk, und prüfen Sie, was Sie zuletzt eingetragen haben.'
    : `Sehen Sie in die Sicherung von ${moment}, bevor Sie weiter eintragen, und gehen Sie auf sie zurück, wenn dort mehr stimmt. Keine alte Sicherung wird entfernt, bis Sie Weiter sagen.`;

export const copies: Translation<typeof english> = {
  title: 'Sicherungen',
  line: 'Eine Sicherung wird gemacht, wenn Sie ein geändertes Arbeitsbuch schließen, jede halbe Stunde bei der Arbeit und vor allem, was schiefgehen könnte. Jede wird Zeile für Zeile mit dem Arbeitsbuch verglichen.',
  keptIn: (folder: string) => `Sie liegen in ${folder}.`,
  none: 'Es gibt noch keine Sicherung.',
  make: 'Jetzt eine machen',
  made: (moment: string) => `Eine Sicherung wurde gemacht und verglichen, ${moment}.`,
  columns: {
    at: 'Gemacht',
    why: 'Warum',
    hives: 'Völker',
    batches: 'Serien',
    looks: 'Kontrollen',
    queens: 'Königinnen',
    checked: 'Geprüft',
    place: 'Wo',
    acts: 'Zu tun',
  },
  purposes: {
    'by-hand': 'von Ihnen gemacht',
    timer: 'bei der Arbeit',
    close: 'beim Schließen',
    'before-format': 'vor einer Aktualisierung',
    'before-import': 'vor dem Übernehmen einer Tabelle',
    'before-restore': 'vor dem Zurückgehen',
  },
  checked: 'ja',
  notChecked: 'nein',
  unknown: 'nicht bekannt',
  places: { here: 'dieser Rechner', second: 'zweiter Ort', both: 'beide Orte' },
  look: 'Hineinsehen',
  lookAt: (moment: string) => `In die Sicherung von ${moment} hineinsehen`,
  goBack: 'Auf diese zurückgehen',
  goBackTo: (moment: string) => `Auf die Sicherung von ${moment} zurückgehen`,
  sure: (moment: string) =>
    `Das Arbeitsbuch wird sein, wie es am ${moment} war. Wie es jetzt ist, bleibt es daneben unter einem Namen mit dem heutigen Datum und als weitere Sicherung. Nichts wird entfernt.`,
  sureMissing: (moment: string) => `Die Sicherung von ${moment} wird wieder Ihr Arbeitsbuch, in diesem Ordner:`,
  folder: 'Ordner',
  yes: 'Zurückgehen',
  no: 'Lassen, wie es ist',
  backAt: (keptAs: string) => `Sie sind zurück. Das Arbeitsbuch, wie es bis jetzt war, liegt als ${keptAs}.`,
  back: 'Sie sind zurück.',
  hold: {
    restored:
      'Sie sind auf eine Sicherung zurückgegangen. Bis Sie Weiter sagen, wird keine alte Sicherung entfernt, damit Sie noch eine andere wählen können.',
    harmed:
      'Die Datei war beschädigt oder verändert. Bis Sie Weiter sagen, wird keine alte Sicherung entfernt, damit Sie suchen können, was fehlt.',
    'counts-fell':
      'Die neueste Sicherung enthält viel weniger als die davor. Bis Sie Weiter sagen, wird keine alte Sicherung entfernt. Sehen Sie in die davor, wenn Sie nicht so viel löschen wollten.',
  },
  goOn: 'Weiter wie gewohnt',
  second: {
    title: 'Ein zweiter Ort',
    line: 'Ein Stick oder ein anderes Laufwerk, damit ein kaputter oder verlorener Rechner die Sicherungen nicht mitnimmt. Die neueste geht jedes Mal dorthin, wenn es angeschlossen ist.',
    folder: 'Ordner des zweiten Orts',
    choose: 'Ordner wählen …',
    set: 'Diesen Ordner benutzen',
    unset: 'Kein zweiter Ort',
    none: 'Keiner ist gewählt.',
    newest: (moment: string) => `Die neueste Sicherung dort ist von ${moment}.`,
    old: (moment: string, days: number) =>
      `Die neueste Sicherung dort ist von ${moment}, ${days} Tage alt. Schließen Sie das Laufwerk an, und machen Sie dann eine Sicherung.`,
    empty: 'Dort liegt noch keine Sicherung.',
    missing: 'Er ist jetzt nicht angeschlossen. Sicherungen gehen wieder dorthin, sobald er es ist.',
  },
  strip: (moment: string) => `Sie sehen in die Sicherung von ${moment}. Darin kann nichts gespeichert werden.`,
  leave: 'Zurück zu meinem Arbeitsbuch',
  readOnly: READ_ONLY,
  lookWithout: 'Ansehen, ohne etwas zu ändern',
  lookAgain: 'Noch einmal nachsehen',
  openToWrite: 'Zum Schreiben öffnen',
  risky: (place: RiskyPlace) => RISKY[place.kind](place.sign),
  understood: 'Verstanden',
  harm: {
    damaged: (moment: string | null) =>
      `Dieses Arbeitsbuch ließ sich öffnen, und ein Teil der Datei ist beschädigt. ${WAYS_ON(moment)}`,
    changed: (moment: string | null) =>
      `Etwas in dieser Datei ist nicht, was es beim letzten Schließen war: Das Laufwerk verlor es, oder ein anderes Programm änderte es. ${WAYS_ON(moment)}`,
    see: 'Sicherungen ansehen',
  },
  trouble: 'Nicht gespeichert',
  elsewhere: {
    offer: 'Arbeitsbuch anderswo speichern …',
    line: 'Alles Gespeicherte kommt in eine neue Datei in diesem Ordner, und das Programm macht dort weiter. Was auf der Seite eingetragen ist, bleibt; speichern Sie es danach noch einmal.',
    folder: 'Ordner, wenn es geht auf einem anderen Laufwerk',
    choose: 'Ordner wählen …',
    save: 'Dort speichern',
    saved: (file: string) => `Das Arbeitsbuch ist jetzt ${file}. Speichern Sie noch einmal, was auf der Seite steht.`,
    understood: 'Gut',
  },
  notOpened: (name: string) => `Ihr Arbeitsbuch „${name}“ konnte nicht geöffnet werden.`,
  comeBack: 'Sie können ein anderes öffnen, oder unten auf eine der Sicherungen zurückgehen.',
};
