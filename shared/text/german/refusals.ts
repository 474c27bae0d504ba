import type { Day, IsoDay } from '../../kernel/day.ts';
import { english } from '../english/english.ts';
import type { NOTICES as EnglishNotices, REFUSALS as EnglishRefusals } from '../english/refusals.ts';
import { changeSentence } from '../sentences.ts';
import type { Translation } from '../translation.ts';
import { laidOver } from '../translation.ts';
import { calibrationWords, ownSheets } from './calibration.ts';
import { CHANGES } from './history.ts';
import { lookWords } from './looks.ts';
import { losses } from './losses.ts';
import { STEP_TITLES } from './step-titles.ts';
import { FILE_TROUBLE, IMPORT_FIELD_WORDS } from './tables-in.ts';

const cells = (n: number) => (n === 1 ? '1 Zelle' : `${n} Zellen`);
const title = (step: string) => `„${STEP_TITLES[step as keyof typeof STEP_TITLES] ?? step}“`;
const lookName = (result: string) => lookWords[result as keyof typeof lookWords]?.name ?? result;

const NOT_SAVED: Readonly<Record<string, string>> = {
  'disk-full':
    'Nicht gespeichert: Der Datenträger ist voll. Was Sie eingegeben haben, steht noch hier. Schaffen Sie Platz, und speichern Sie dann noch einmal.',
  'drive-error':
    'Nicht gespeichert: Das Laufwerk meldete einen Fehler. Was Sie eingegeben haben, steht noch hier. Speichern Sie das Arbeitsbuch anderswo, auf einem anderen Laufwerk, bevor Sie weitermachen.',
  'read-only':
    'Nicht gespeichert: Dieses Arbeitsbuch ist nur zum Lesen geöffnet. Speichern Sie anderswo eine Kopie, um darin zu schreiben.',
  'file-replaced':
    'Nicht gespeichert: Ein anderes Programm hat an die Stelle des Arbeitsbuchs eine andere Datei gelegt. Was Sie eingegeben haben, steht noch hier. Speichern Sie das Arbeitsbuch anderswo, und speichern Sie dann noch einmal.',
};

const SHEET_TROUBLE: Readonly<Record<string, (mm: number) => string>> = {
  'too-small': (mm) =>
    `${mm} mm ist zu klein für eine Kästchennummer und ihre Tage. Messen Sie noch einmal, oder wählen Sie größere Etiketten.`,
  overlap: (mm) =>
    `Die Etiketten würden sich um ${mm} mm überdecken. Der Abstand ist Breite oder Höhe eines Etiketts und die Lücke zum nächsten.`,
  'beyond-paper': (mm) =>
    `Das letzte Etikett liefe ${mm} mm über das Papier hinaus. Prüfen Sie Rand, Abstand und Anzahl.`,
};

const READING_TROUBLE: Readonly<Record<string, (mm: number) => string>> = {
  scaled: (mm) =>
    `${mm} mm für einen Balken von 100 heißt, dass die Seite angepasst gedruckt wurde. Drucken Sie sie in „Tatsächlicher Größe“ neu, und messen Sie dann.`,
  far: (mm) => `${mm} mm ist zu weit von den gezeichneten 20 mm. Messen Sie noch einmal bis zum Kreuz.`,
};

const NO_COPY: Readonly<Record<string, string>> = {
  'disk-full':
    'Keine Sicherung gemacht: Der Datenträger ist voll. Ihr Arbeitsbuch und die älteren Sicherungen sind, wie sie waren. Schaffen Sie Platz, und versuchen Sie es noch einmal.',
  'drive-error':
    'Keine Sicherung gemacht: Das Laufwerk meldete einen Fehler. Ihr Arbeitsbuch und die älteren Sicherungen sind, wie sie waren. Versuchen Sie es noch einmal, oder wählen Sie einen Ordner auf einem anderen Laufwerk.',
  'read-only':
    'Keine Sicherung gemacht: Dort kann nichts geschrieben werden. Ihr Arbeitsbuch ist, wie es war. Wählen Sie einen anderen Ordner.',
};

const ERRAND_TROUBLE: Readonly<Record<string, string>> = {
  'not-an-errand': 'Diese Datei ist kein Auftrag von Ripecell. Wählen Sie die Datei, die mit den Kontrollen zurückkam.',
  'other-version':
    'Dieser Auftrag wurde mit einer anderen Version von Ripecell gemacht. Öffnen Sie beide mit derselben Version, geben Sie ihn neu aus, oder tragen Sie die Kontrollen von Hand ein.',
  damaged:
    'Dieser Auftrag wurde unterwegs beschädigt. Bitten Sie noch einmal um die Datei; nichts daraus wurde übernommen.',
};

const EXPECTED: Readonly<Record<string, string>> = {
  number: 'Geben Sie eine ganze Zahl ein.',
  day: 'Geben Sie einen Tag ein, etwa 14. Mai, 14.5., +3 oder heute.',
  text: 'Geben Sie einen kürzeren Text ein, oder füllen Sie das leere Feld aus.',
  choice: 'Wählen Sie eines aus der Liste.',
};

const FIELDS: Readonly<Record<string, string>> = {
  anchorOn: 'Tag',
  cellsPlanned: 'Zellen',
  countedOn: 'Tag der Zählung',
  given: 'Gegeben',
  taken: 'Angenommen',
  removed: 'Weggenommen',
  sealed: 'Verdeckelt',
  code: 'Kürzel',
  name: 'Name',
  placedOn: 'Tag',
  lookedOn: 'Tag',
  doneOn: 'Tag der Erledigung',
  seenOn: 'Tag der Beobachtung',
  closedOn: 'Tag des Abschlusses',
  boxes: 'Kästchen',
  codes: 'Kästchen',
  note: 'Notiz',
  startAt: 'Erstes freies Etikett',
  strength: 'Stärke, 1 bis 5',
  food: 'Futter, 1 bis 5',
  number: 'Nummer',
  movedOn: 'Tag',
  toldOn: 'Tag',
  walkOrder: 'Platz im Rundgang',
  row: 'Reihe oder Merkzeichen',
  scoredOn: 'Tag',
  testedOn: 'Tag',
  counted: 'Gezählt',
  outOf: 'Von',
  hours: 'Nach Stunden',
  product: 'Mittel',
  amount: 'Menge',
  ownFeed: 'Was es ist',
  fedOn: 'Tag',
  places: 'Völker und Kästchen',
  reason: 'Wegen',
  paper: 'Papier',
  place: 'Platz',
  fromOn: 'Von',
  toOn: 'Bis',
  goneTo: 'An wen',
  price: 'Preis',
  toldBy: 'Erzählt von',
  bornIn: 'Geboren',
  motherLine: 'Mutterlinie',
};

const fieldName = (field: string): string => FIELDS[field.split('.').at(-1) ?? field] ?? 'Dieses Feld';

export const REFUSALS: Translation<typeof EnglishRefusals> = {
  'errand-unreadable': ({ reason }) => ERRAND_TROUBLE[reason] ?? reason,
  'errand-not-decided': ({ box, on }, day) =>
    `${box} hat am ${day(on)} zwei verschiedene Kontrollen. Wählen Sie, welche gelten soll, und übernehmen Sie dann die Kontrollen.`,
  'no-box-for-errand': () => 'Kästchen: Nennen Sie mindestens ein Kästchen, das in Gebrauch ist, etwa K01-K18.',
  'no-workbook-open': () => 'Kein Arbeitsbuch ist geöffnet. Öffnen Sie eines, oder beginnen Sie ein neues.',
  'not-saved': ({ reason }) => NOT_SAVED[reason] ?? reason,
  'not-valid': ({ field, expected }) => `${fieldName(field)}: ${EXPECTED[expected] ?? ''}`,
  'file-not-found': ({ file }) =>
    `Datei: In ${file} ist nichts. Prüfen Sie den Namen, oder suchen Sie in einem anderen Ordner.`,
  'file-not-readable': ({ file }) =>
    `Datei: Dieses Benutzerkonto darf ${file} nicht lesen. Bitten Sie den Besitzer um das Recht dazu, oder kopieren Sie sie in Ihre Dokumente.`,
  'drive-refused': ({ file, reason }) =>
    reason === 'disk-full'
      ? `Datei: Der Datenträger ist voll, darum konnte ${file} nicht geöffnet oder angelegt werden. Nichts darin wurde geändert. Schaffen Sie Platz, oder wählen Sie ein anderes Laufwerk.`
      : `Datei: Das Laufwerk meldete einen Fehler mit ${file}. Nichts darin wurde geändert. Sehen Sie nach, ob das Laufwerk angeschlossen ist, und versuchen Sie es noch einmal; oder öffnen Sie eine Sicherung.`,
  'folder-not-found': ({ folder }) =>
    `Ordner: Den Ordner ${folder} gibt es nicht. Legen Sie ihn zuerst an, oder lassen Sie den üblichen Ort.`,
  'file-exists': ({ file }) =>
    `Name: In ${file} gibt es schon ein Arbeitsbuch mit diesem Namen. Wählen Sie einen anderen Namen, oder öffnen Sie jenes.`,
  'not-a-workbook': ({ file }) =>
    `Datei: ${file} ist kein Arbeitsbuch von Ripecell. Nichts darin wurde geändert. Wählen Sie eine Datei, die auf .ripecell endet.`,
  'workbook-newer': ({ version }) =>
    `Datei: Dieses Arbeitsbuch wurde mit einer neueren Version (${version}) des Programms gemacht. Nichts darin wurde geändert. Besorgen Sie das neuere Programm, und öffnen Sie es dann.`,
  'not-practice': () =>
    'Nichts wurde zurückgesetzt: Das offene Arbeitsbuch ist nicht das Übungsbuch dieses Rechners. Öffnen Sie jenes unter Kurs und setzen Sie es dort zurück.',
  'package-broken': ({ file }) =>
    `Datei: ${file} ist kein Paket eines Arbeitsbuchs, oder es wurde unterwegs beschädigt. Nichts wurde ausgepackt. Kopieren Sie es noch einmal vom anderen Rechner.`,
  'workbook-damaged': ({ file }) =>
    `Datei: ${file} ist beschädigt. Sie wurde gelassen, wie sie ist. Öffnen Sie stattdessen die neueste Sicherung.`,
  'workbook-open-elsewhere': () =>
    'Datei: Dieses Arbeitsbuch ist in einem anderen Fenster oder Programm geöffnet. Machen Sie dort weiter, schließen Sie es dort zuerst, oder sehen Sie es hier an, ohne etwas zu ändern.',
  'place-not-writable': ({ folder }) =>
    `Ordner: In ${folder} kann nichts geschrieben werden. Wählen Sie einen anderen Ordner, etwa Ihre Dokumente.`,
  'no-workbook-to-copy': () =>
    'Es ist kein eigenes Arbeitsbuch geöffnet, das sich sichern ließe. Öffnen Sie es zuerst.',
  'copy-not-made': ({ reason }) => NO_COPY[reason] ?? reason,
  'copy-not-found': () =>
    'Sicherung: Diese Sicherung ist nicht mehr, wo sie war. Wählen Sie eine andere aus der Liste.',
  'copy-not-sound': ({ file }) =>
    `Sicherung: ${file} ist beschädigt oder nicht mehr, was sie beim Anlegen war. Sie wurde gelassen, wie sie ist. Wählen Sie eine andere Sicherung.`,
  'second-place-same': ({ folder }) =>
    `Zweiter Ort: In ${folder} liegen schon das Arbeitsbuch oder seine ersten Sicherungen. Wählen Sie einen Ordner auf einem anderen Laufwerk.`,
  'nothing-to-undo': () =>
    'Nichts rückgängig zu machen: Dieses Arbeitsbuch hat keine Änderung mehr, die sich zurücknehmen ließe.',
  'nothing-to-redo': () =>
    'Nichts zu wiederholen: Nach dem Zurücknehmen kam eine neue Änderung, oder nichts wurde zurückgenommen.',
  'changed-since': ({ way, words }) =>
    `„${changeSentence({ sentences: { changes: laidOver(english.sentences.changes, CHANGES) } } as never, words)}“ lässt sich nicht ${way === 'undo' ? 'zurücknehmen' : 'wiederholen'}: Etwas anderes hat dieselben Zeilen seither geändert. Nichts wurde angerührt. Berichtigen Sie es von Hand, wo es steht.`,
  'batch-not-found': () => 'Diese Serie steht nicht mehr im Arbeitsbuch. Gehen Sie zurück zur Liste der Serien.',
  'batch-code-taken': ({ code }) =>
    `Kürzel: Es gibt schon eine Serie ${code}. Lassen Sie das Kürzel leer, um das nächste freie zu bekommen.`,
  'more-taken-than-given': ({ given, taken }) =>
    `Angenommen: ${cells(taken)} angenommen ist mehr als die ${given} gegebenen. Berichtigen Sie eines von beiden.`,
  'more-sealed-than-taken': ({ taken, sealed }) =>
    `Verdeckelt: ${cells(sealed)} verdeckelt ist mehr als die ${taken}, die angenommen und belassen wurden. Berichtigen Sie eines von beiden.`,
  'more-sealed-than-given': ({ given, sealed }) =>
    `Verdeckelt: ${cells(sealed)} verdeckelt ist mehr als die ${given} gegebenen. Berichtigen Sie eines von beiden.`,
  'more-sealed-than-left': ({ given, removed, sealed }) =>
    `Verdeckelt: ${cells(sealed)} verdeckelt ist mehr, als von ${given} gegebenen nach ${removed} weggenommenen übrig sein kann. Berichtigen Sie eines von den dreien.`,
  'more-removed-than-taken': ({ taken, removed }) =>
    `Weggenommen: ${cells(removed)} weggenommen ist mehr als die ${taken}, die es gab. Berichtigen Sie eines von beiden.`,
  'more-placed-than-sealed': ({ placed, sealed }) =>
    `Verdeckelt: ${cells(placed)} ${placed === 1 ? 'ist' : 'sind'} schon in Kästchen, also können nicht nur ${sealed} verdeckelt sein. Berichtigen Sie die Zählung, oder nehmen Sie zuerst Zellen aus den Kästchen.`,
  'day-before-start': ({ field, day, start }, text) =>
    `${fieldName(field)}: ${text(day)} liegt vor dem Beginn dieser Serie am ${text(start)}. Geben Sie diesen Tag oder einen späteren ein.`,
  'writer-not-listed': ({ name }) =>
    `${name} steht nicht unter denen, die in dieses Arbeitsbuch schreiben. Tragen Sie den Namen unter Einstellungen ein und wählen Sie ihn dann.`,
  'result-key-twice': ({ key, results: [one, other] }) =>
    `Ergebnistasten: „${key}“ kann nicht „${lookName(one)}“ und „${lookName(other)}“ zugleich sein. Geben Sie einem von beiden einen anderen Buchstaben.`,
  'comb-needed': () =>
    'Wabe: Sagen Sie, ob die Wabe schon ausgebaut ist oder mit Streifen Mittelwand beginnt; die Tage sind verschieden.',
  'builder-in-use': ({ builder, batch, until }, text) =>
    `Pflegevolk: ${builder} pflegt die Zellen von ${batch} bis ${text(until)}. Wählen Sie ein anderes Pflegevolk, oder beginnen Sie an diesem Tag oder später.`,
  'hive-code-taken': ({ code }) =>
    `Volk: Es gibt schon ein Volk ${code}. Wählen Sie es aus der Liste, oder geben Sie ein anderes Kürzel ein.`,
  'hive-not-found': () => 'Volk: Dieses Volk steht nicht mehr im Arbeitsbuch. Wählen Sie ein anderes.',
  'bar-not-found': () => 'Diese Leiste gehört nicht mehr zur Serie. Laden Sie die Seite der Serie neu.',
  'step-not-in-timetable': ({ step }) =>
    `${title(step)} gehört nicht zum Zeitplan dieser Serie. Wählen Sie einen der Schritte, die dort stehen.`,
  'step-already-done': ({ step }) =>
    `${title(step)} ist schon als erledigt vermerkt. Nehmen Sie den Vermerk zuerst zurück.`,
  'nothing-lost': ({ stage }) =>
    `Wie viele: In dieser Serie ist von keinem Verlust „${losses.stages[stage]}“ etwas bekannt. Tragen Sie zuerst Zahlen oder Kontrollen ein.`,
  'more-reasons-than-lost': ({ lost, explained }) =>
    `Wie viele: Damit kämen die Gründe auf ${explained}, verloren gingen aber nur ${lost}. Geben Sie eine kleinere Zahl ein.`,
  'step-needed': ({ step }) =>
    `${title(step)} kann nicht entfallen: Die Bienen lassen keine Wahl. Vermerken Sie den Schritt mit seinem Tag als erledigt, oder schließen Sie die Serie ab.`,
  'move-past-window': ({ earliest, latest }, text) =>
    `Neuer Tag: Die Bienen lassen dafür nur ${text(earliest)} bis ${text(latest)}. Wählen Sie einen Tag dazwischen.`,
  'observation-not-found': () => 'Diese Beobachtung gehört nicht mehr zur Serie. Laden Sie die Seite der Serie neu.',
  'method-name-in-use': ({ name }) => `Name: Sie haben schon ein Verfahren ${name}. Geben Sie einen anderen Namen ein.`,
  'hive-code-in-use': ({ code }) => `Kürzel: Es gibt schon ein Volk ${code}. Geben Sie ein anderes Kürzel ein.`,
  'yard-name-in-use': ({ name }) => `Name: Es gibt schon einen Stand ${name}. Geben Sie einen anderen Namen ein.`,
  'yard-not-found': () => 'Stand: Dieser Stand steht nicht mehr im Arbeitsbuch. Wählen Sie einen anderen.',
  'hive-missing': () => 'Dieses Volk steht nicht mehr im Arbeitsbuch. Gehen Sie zurück zur Liste der Völker.',
  'box-codes-unreadable': ({ text }) =>
    `Kästchen: „${text}“ ist nicht zu lesen. Geben Sie Kürzel ein wie K01-K18, oder K01, K03, K07.`,
  'box-code-taken': ({ code }) =>
    `Kästchen: Es gibt schon ein Kästchen ${code}. Lassen Sie es weg, oder geben Sie andere Kürzel ein.`,
  'box-not-found': ({ code }) =>
    `Kästchen: Es gibt kein Kästchen ${code}. Fügen Sie es zuerst unter Begattungskästchen hinzu, oder berichtigen Sie das Kürzel.`,
  'box-holds-a-cell': ({ box, batch, since }, text) =>
    `Kästchen: In ${box} ist seit ${text(since)} eine Zelle von ${batch}. Machen Sie es zuerst frei, oder lassen Sie es weg.`,
  'box-holds-a-queen': ({ box, queen }) =>
    `Kästchen: In ${box} ist die Königin ${queen}. Sagen Sie zuerst auf ihrer Seite, wohin sie geht, oder lassen Sie das Kästchen weg.`,
  'box-retired': ({ box }) => `Kästchen: ${box} wurde außer Gebrauch genommen. Lassen Sie es weg.`,
  'more-boxes-than-sealed-cells': ({ boxes, cells: left }) =>
    `Kästchen: ${boxes} Kästchen für ${left === 0 ? 'keine' : left} verdeckelte ${left === 1 ? 'Zelle' : 'Zellen'}, die in dieser Serie übrig ${left === 1 ? 'ist' : 'sind'}. Nennen Sie weniger Kästchen, oder berichtigen Sie die Zählung der verdeckelten Zellen.`,
  'emergence-passed': ({ latest }, text) =>
    `Tag: Die letzten Königinnen dieser Serie sind bis ${text(latest)} geschlüpft. Berichtigen Sie den Tag, oder sagen Sie unter „Was zu sehen war“, was Sie wirklich fanden.`,
  'cells-not-ripe': ({ earliest }, text) =>
    `Tag: Zellen können nicht versetzt werden, bevor sie verdeckelt sind, frühestens ${text(earliest)}. Berichtigen Sie den Tag.`,
  'look-before-placing': ({ placedOn }, text) =>
    `Tag: Die Zelle wurde am ${text(placedOn)} eingesetzt. Geben Sie diesen Tag oder einen späteren ein.`,
  'placement-not-found': () => 'In diesem Kästchen ist nichts mehr. Laden Sie die Seite neu.',
  'proposal-outdated': ({ box }) =>
    `${box}: Seit diesem Vorschlag wurde etwas eingetragen, darum gilt er nicht mehr. Sehen Sie nach, was jetzt vorgeschlagen wird.`,
  'wrong-number-of-ids': ({ needed }) => `Kästchen: ${needed} Kästchen wurden genannt. Versuchen Sie es noch einmal.`,
  'queen-number-taken': ({ number }) =>
    `Nummer: ${number} gehört einer anderen Königin. Nehmen Sie die nächste freie Nummer.`,
  'queen-dates-turned-round': ({ firstEggsOn, provedOn }, text) =>
    `Erwiesen am: Verdeckelte Brut am ${text(provedOn)} kann nicht vor den ersten Eiern am ${text(firstEggsOn)} liegen. Berichtigen Sie eines von beiden.`,
  'no-cells-planned': () =>
    'Für diese Serie war keine Zahl von Zellen geplant. Tragen Sie die gegebenen Zellen je Leiste ein.',
  'wish-missing': () => 'Dieser Wunsch steht nicht mehr im Arbeitsbuch. Öffnen Sie den Plan noch einmal.',
  'queen-promised': ({ queen, to }) =>
    `Versprochen an: ${queen} ist schon an ${to} versprochen. Nehmen Sie erst dieses Versprechen zurück, oder wählen Sie eine andere Königin.`,
  'queen-not-here': ({ queen }) =>
    `Königin ${queen} ist nicht mehr bei Ihnen und kann nicht versprochen werden. Wählen Sie eine Königin, die noch bei Ihnen ist.`,
  'promise-days-turned-round': ({ promisedOn }, text) =>
    `Gewünscht bis: Der Tag liegt vor dem Versprechen vom ${text(promisedOn)}. Berichtigen Sie ihn, oder lassen Sie ihn leer.`,
  'promise-missing': () =>
    'Dieses Versprechen steht nicht mehr im Arbeitsbuch. Gehen Sie zurück zur Königin und sehen Sie nach.',
  'queen-missing': () => 'Diese Königin steht nicht mehr im Arbeitsbuch. Gehen Sie zurück zur Liste der Königinnen.',
  'queen-own-ancestor': ({ number }) =>
    `Mutter: ${number} stammt von dieser Königin ab, also kann sie nicht ihre Mutter sein. Wählen Sie eine andere, oder lassen Sie es offen.`,
  'hive-for-queen-needed': () => 'Volk: Sagen Sie, in welches Volk sie gebracht wurde. Wählen Sie eines aus der Liste.',
  'queen-moved-before-birth': ({ bornOn }, text) =>
    `Tag: Sie kam frühestens ${text(bornOn)} aus ihrer Zelle. Geben Sie diesen Tag oder einen späteren ein.`,
  'follow-up-missing': () => 'Diese Prüfung steht nicht mehr im Arbeitsbuch. Laden Sie die Seite neu.',
  'answered-before-move': ({ movedOn }, text) =>
    `Tag: Sie wurde am ${text(movedOn)} dorthin gebracht. Geben Sie diesen Tag oder einen späteren ein.`,
  'out-of-needed': () => 'Von: Geben Sie ein, über wie viele Zellen, Bienen oder Tage gezählt wurde.',
  'more-cleared-than-tested': ({ counted, outOf }) =>
    `Gezählt: ${counted} ausgeräumt ist mehr als die ${outOf} geprüften. Berichtigen Sie eines von beiden.`,
  'treatment-turned-round': ({ fromOn }, text) =>
    `Bis: Die Behandlung begann am ${text(fromOn)}. Geben Sie diesen Tag oder einen späteren ein, oder lassen Sie das Feld leer.`,
  'look-missing': () => 'Kontrolle: Sie steht nicht mehr im Arbeitsbuch. Schlagen Sie die Seite noch einmal auf.',
  'feeding-missing': () => 'Fütterung: Sie steht nicht mehr im Arbeitsbuch. Schlagen Sie die Seite noch einmal auf.',
  'nothing-to-feed': ({ code }) =>
    `Völker und Kästchen: ${code} ist kein Volk und kein Kästchen in Gebrauch. Berichtigen Sie das Kürzel, oder fügen Sie es zuerst hinzu.`,
  'feed-not-named': () => 'Was es ist: Geben Sie den Namen des Futters ein, oder wählen Sie eines aus der Liste.',
  'amount-unreadable': ({ text }) =>
    `Wie viel: „${text}“ ist keine Menge. Geben Sie eine Zahl ein, oder eine mit Einheit, etwa 0,5, 500 g oder 1,5 L.`,
  'amount-too-large': ({ text }) =>
    `Wie viel: ${text} an einem Ort sind mehr als 100 Liter oder Kilogramm. Berichtigen Sie die Menge.`,
  'no-labels': () => 'Etiketten: Von dieser Serie sind keine Zellen in Kästchen. Setzen Sie zuerst Zellen in Kästchen.',
  'nothing-to-label': () =>
    'Etiketten für: Von dieser Auswahl ist nichts zu beschriften. Wählen Sie eine andere Serie oder Art.',
  'file-unreadable': ({ trouble }) => FILE_TROUBLE[trouble.reason]?.(trouble) ?? trouble.reason,
  'fields-not-matched': ({ fields }) =>
    `Spalten: Sagen Sie, welche Spalte ${fields.map((field) => IMPORT_FIELD_WORDS[field] ?? field).join(' und welche ')} ist.`,
  'day-order-needed': () =>
    'Tage: In dieser Datei lassen sie sich auf zwei Arten lesen. Sagen Sie, wie sie geschrieben sind.',
  'rows-with-problems': ({ rows, first }) =>
    `Datei: ${rows === 1 ? 'Mit 1 Zeile stimmt etwas nicht' : `Mit ${rows} Zeilen stimmt etwas nicht`}, die erste ist Zeile ${first}. Berichtigen Sie die Datei, oder lassen Sie solche Zeilen weg.`,
  'nothing-to-take-in': () =>
    'Datei: Keine ihrer Zeilen kann übernommen werden. Berichtigen Sie die genannten Zeilen, und versuchen Sie es noch einmal.',
  'no-calendar-events': () =>
    'Serien: Von dieser Auswahl kommt nichts in einen Kalender. Wählen Sie eine geplante oder laufende Serie.',
  'start-beyond-sheet': ({ labels }) =>
    `Erstes freies Etikett: Dieser Bogen hat ${labels} Etiketten. Geben Sie eine Zahl von 1 bis ${labels} ein.`,
  'season-without-batches': ({ season }) =>
    `Saison: ${season} wurde keine Serie begonnen. Wählen Sie eine Saison mit Serien.`,
  'label-sheet-missing': () =>
    'Bogen: Dieser Etikettenbogen steht nicht mehr im Arbeitsbuch. Wählen Sie einen anderen.',
  'label-sheet-wrong': ({ field, trouble, millimetres }) =>
    `${ownSheets.fields?.[field] ?? field}: ${SHEET_TROUBLE[trouble]?.(millimetres) ?? trouble}`,
  'printer-reading-wrong': ({ field, trouble, millimetres }) =>
    `${calibrationWords.fields?.[field] ?? field}: ${READING_TROUBLE[trouble]?.(millimetres) ?? trouble}`,
  'qr-does-not-fit': ({ neededMillimetres }) =>
    `Quadratischer Code: Er braucht ${neededMillimetres.toFixed(0)} mm, mehr, als dieses Etikett hat. Wählen Sie ein größeres Etikett, oder lassen Sie den Code weg.`,
};

type DayText = (day: Day | IsoDay) => string;

export const NOTICES: Translation<typeof EnglishNotices> = {
  'low-take': ({ given, taken }) =>
    `Nur ${taken} von ${given} angenommen. Suchen Sie im Pflegevolk nach einer Königin oder nach Zellen, und denken Sie daran, neue Larven als eigene Serie zu geben.`,
  'many-cells-for-builder': ({ cells: many, usualMost }) =>
    `${cells(many)} sind mehr als die ${usualMost}, die ein Pflegevolk gewöhnlich gut zu Ende pflegt. Denken Sie daran, sie auf zwei zu verteilen.`,
  'move-during-hands-off': ({ hive, until }, text: DayText) =>
    `${hive} sollte bis ${text(until)} in Ruhe bleiben: Die Zellen vertragen keinen Stoß. Die Wanderung ist trotzdem eingetragen.`,
  'two-cells-that-day': ({ box, batch, which }) =>
    which === 'new'
      ? `In ${box} waren an diesem Tag zwei Zellen. Diese Kontrolle zählt für die neue, von ${batch}.`
      : `In ${box} waren an diesem Tag zwei Zellen. Diese Kontrolle zählt für die frühere, von ${batch}; von der neuen ist am ersten Tag nur „Zelle“ zu sehen.`,
  'look-during-hands-off': ({ box, until }, text: DayText) => `${box} sollte bis ${text(until)} in Ruhe bleiben.`,
  'late-for-mating': ({ box, daysSinceEmergence }) =>
    `${box}: ${daysSinceEmergence} Tage nach dem Schlupf noch unbegattet. Für die Begattung ist es jetzt spät; kontrollieren Sie in einigen Tagen noch einmal, und entscheiden Sie dann.`,
  'early-result': ({ box, result, daysSincePlaced }) =>
    `${box}: „${lookName(result)}“ nur ${daysSincePlaced} Tage nach dem Einsetzen der Zelle ist früh. Richtiges Kästchen?`,
  'box-just-emptied': ({ box, from }, text) =>
    `${box}: Die Königin wurde eben erst entnommen; die Bienen nehmen eine Zelle ab ${text(from)} besser an. Zerstören Sie zuerst ihre eigenen Zellen.`,
  'queen-not-proved': ({ queen }) =>
    `${queen}: Von ihr war noch keine verdeckelte Arbeiterinnenbrut zu sehen, sie ist also nicht erwiesen.`,
  'queen-promised-to-other': ({ queen, to }) =>
    `${queen} war an ${to} versprochen. Haben Sie dafür eine andere Königin?`,
  'young-queen': ({ queen, days }) =>
    `${queen} ist vor ${days} Tagen geschlüpft. Königinnen, die ihr Kästchen vor Tag 21 verlassen, leben seltener bis zur nächsten Saison.`,
  'hive-has-queen': ({ hive, queen }) =>
    `${hive} hat nach dem Verzeichnis ${queen} als Königin. Ist sie heraus? Sagen Sie auf ihrer Seite, was aus ihr wurde.`,
  'builder-resting': ({ builder, until }, text) =>
    `${builder} hat eben erst Zellen abgegeben und sollte bis ${text(until)} ruhen.`,
  'feed-job-done': ({ batch }) => `${batch}: „${STEP_TITLES['feed-start']}“ ist abgehakt.`,
  'emergence-near': ({ earliest }, text) =>
    `Die erste Königin kann am ${text(earliest)} schlüpfen. Sehen Sie nach Löchern, bevor Sie die übrigen verteilen.`,
  'look-before-emergence': ({ step, earliest }, text) =>
    `Keine Königin dieser Serie kann vor ${text(earliest)} heraus sein, aber ${title(step)} ist früher vermerkt. Wie eingegeben behalten; richtiger Tag, richtige Serie?`,
  'day-in-future': ({ day }, text) => `${text(day)} kommt erst noch. Wie eingegeben behalten.`,
};
