import type { season as english } from '../english/season.ts';
import type { Translation } from '../translation.ts';

const moreOrFewer = (difference: number): string => {
  const whole = Math.round(difference);
  if (whole === 0) return 'nicht mehr';
  return whole > 0 ? `${whole} mehr` : `${-whole} weniger`;
};

export const season: Translation<typeof english> = {
  title: 'Saison',
  tabs: { compare: 'Vergleichen', queens: 'Wie viele Königinnen', plan: 'Plan', weather: 'Wetter', report: 'Bericht' },
  plan: 'Plan',
  compare: 'Vergleichen',
  by: 'Vergleichen nach',
  and: 'und nach',
  oneFactor: 'nichts weiter',
  allowingFor: 'Unter Berücksichtigung von',
  allowNothing: 'nichts',
  in: 'In',
  allSeasons: 'allen Saisons',
  leaveOut: 'Übung weglassen',
  ahead: 'Vorausschauen auf',
  aheadOf: (batches: number) => (batches === 1 ? 'die nächste Serie' : `die nächsten ${batches} Serien`),
  stage: 'Bild zeigt',
  factors: {
    method: 'Verfahren',
    builder: 'Pflegevolk',
    breeder: 'Zuchtvolk',
    season: 'Saison',
    month: 'Monat',
    boxType: 'Bauart des Kästchens',
  },
  manyOf: {
    method: 'Verfahren',
    builder: 'Pflegevölkern',
    breeder: 'Zuchtvölkern',
    season: 'Saisons',
    month: 'Monaten',
    boxType: 'Bauarten',
  },
  ofHundred: {
    take: 'angenommene Zellen je 100 Larven',
    sealing: 'verdeckelte Zellen je 100 angenommene',
    emergence: 'Königinnen je 100 Zellen',
    mating: 'erwiesene Königinnen je 100 geschlüpfte',
  },
  stages: {
    take: { name: 'Annahme', line: 'angenommen von gegeben' },
    sealing: { name: 'verdeckelt', line: 'verdeckelt von denen, die angenommen und belassen wurden' },
    emergence: { name: 'Schlupf', line: 'geschlüpft von den Zellen in Kästchen' },
    mating: { name: 'Begattung', line: 'erwiesen von den geschlüpften' },
    through: { name: 'ganzer Weg', line: 'erwiesene Königinnen, die von gegebenen Larven zu erwarten sind' },
  },
  columns: { group: '', batches: 'Serien' },
  unknown: 'nicht genannt',
  chart: (stage: string, factor: string) => `${stage.charAt(0).toUpperCase()}${stage.slice(1)} nach ${factor}`,
  figuresBy: (factor: string) => `Zahlen nach ${factor}`,
  figure: (successes: string, of: string) => `${successes} von ${of}`,
  range: (range: string) => `in 9 von 10 Fällen: ${range}`,
  batchesN: (n: number) => (n === 1 ? '1 Serie' : `${n} Serien`),
  oneBatch: 'nur eine Serie: größtenteils geraten',
  none: 'nicht gezählt',
  saveFigures: 'Zahlen speichern',
  figuresFile: (factor: string, day: string) => `Zahlen nach ${factor} ${day}`,
  figureColumns: [
    'Gruppe',
    'Stufe',
    'gekommen',
    'von',
    'Serien',
    'schlichter Anteil',
    'schlicht von',
    'schlicht bis',
    'gewogener Anteil',
    'gewogen von',
    'gewogen bis',
  ],
  savedWords: {
    saved: (path: string) => `Gespeichert als ${path}.`,
    notSaved: 'Die Zahlen konnten dort nicht gespeichert werden. Wählen Sie einen anderen Ort.',
    downloaded: 'Die Zahlen liegen in den Downloads Ihres Browsers.',
  },
  finding: {
    nothing: 'Noch wurde nichts gezählt, das sich vergleichen ließe.',
    one: (group: string, stage: string, percent: string, n: number) =>
      `Nur ${group} hat Zahlen für ${stage}: ${percent} über ${n === 1 ? 'eine Serie' : `${n} Serien`}.`,
    weighing: 'Die Serien werden gewogen …',
    wholeWay: 'Der ganze Weg vervielfacht die Stufen; sehen Sie an den Stufen, was sich unterscheiden lässt.',
    certainty: {
      'cannot-tell': (a: string, b: string) => `${a} und ${b} lassen sich nicht unterscheiden.`,
      leaning: (a: string, b: string) => `Es neigt sich zu ${a} gegenüber ${b}.`,
      probably: (a: string, b: string) => `${a} ist wahrscheinlich besser als ${b}.`,
      'very-likely': (a: string, b: string) => `${a} ist sehr wahrscheinlich besser als ${b}.`,
      'as-good-as-certain': (a: string, b: string) => `${a} ist so gut wie sicher besser als ${b}.`,
    },
    bet: (times: number) =>
      `Wetten Sie zwanzigmal darauf, und es stimmt etwa ${times === 20 ? 'jedes Mal' : `${times}-mal`}.`,
    best: (group: string) => `${group} ist das Beste von allen.`,
    difference: (mean: number, lower: number, upper: number, what: string) =>
      `Etwa ${moreOrFewer(mean)} ${what}; in 9 von 10 Fällen zwischen ${moreOrFewer(lower)} und ${moreOrFewer(upper)}.`,
    noMatter: 'Sehr wahrscheinlich kein Unterschied, auf den es ankommt: weniger als 5 von 100 in beiden Richtungen.',
    swing: (group: string, of: number) =>
      of < 1
        ? `Einzelne Serien von ${group} unterscheiden sich, soweit zu sehen, nur durch Glück.`
        : `Einzelne Serien von ${group} schwanken um etwa ${Math.round(of)} von 100 nach beiden Seiten.`,
    guesswork: (group: string) => `${group} ruht auf nur einer Serie: größtenteils geraten.`,
    next: {
      take: (group: string, of: number, span: string) =>
        `Von den nächsten ${of} Larven, gegeben mit ${group}, würden in 9 von 10 Fällen ${span} angenommen.`,
      sealing: (group: string, of: number, span: string) =>
        `Von den nächsten ${of} angenommenen Zellen mit ${group} würden in 9 von 10 Fällen ${span} verdeckelt.`,
      emergence: (group: string, of: number, span: string) =>
        `Von den nächsten ${of} Zellen mit ${group} würden in 9 von 10 Fällen ${span} schlüpfen.`,
      mating: (group: string, of: number, span: string) =>
        `Von den nächsten ${of} Königinnen mit ${group} würden in 9 von 10 Fällen ${span} erwiesen.`,
    },
    inBatches: (group: string, batches: number) => (batches === 1 ? group : `${group} in ${batches} Serien`),
    span: (lower: number, upper: number) => (lower === upper ? String(lower) : `${lower} bis ${upper}`),
    allowing: (factor: string, sentence: string) => `Unter Berücksichtigung von ${factor}: ${sentence}`,
    tooFew: (factor: string) => `Es sind zu wenige Serien, um ${factor} zu berücksichtigen.`,
    notConnected: (a: string, b: string, many: string) =>
      `${a} und ${b} wurden nie an vergleichbaren ${many} versucht, darum lässt sich nicht sagen, was von ihnen und was von den ${many} kommt.`,
    disagrees: (many: string) =>
      `Die beiden Antworten widersprechen sich, weil die Gruppen nicht an denselben ${many} versucht wurden.`,
    settle: (more: number) =>
      `Etwa ${more === 1 ? 'eine weitere Serie' : `${more} weitere Serien`} von jedem würde${more === 1 ? '' : 'n'} es entscheiden, wenn beide so weitergehen.`,
    settleNever: (most: number) => `Mehr als ${most} weitere Serien von jedem wären nötig, um es zu entscheiden.`,
  },
  range9: (range: string) => `in etwa 9 von 10 Fällen ${range}`,
  tableNote:
    'Die Spannen in dieser Tabelle nehmen alle Zellen einer Gruppe als eines, also sind sie der geringste Zweifel, den es gibt. Das Bild darunter berücksichtigt, dass Serien sich unterscheiden.',
  caveat:
    'Punkte und Spannen berücksichtigen, wie sehr sich Serien unterscheiden und wie wenige es sind: Kleine Gruppen werden zu den anderen hingezogen.',
  running: (n: number) =>
    n === 1
      ? '1 Serie läuft noch oder ist nicht zu Ende gezählt; sie bleibt beim ganzen Weg weg.'
      : `${n} Serien laufen noch oder sind nicht zu Ende gezählt; sie bleiben beim ganzen Weg weg.`,
  assumed:
    'Ein weisellos gefundenes Kästchen zählt als geschlüpft, außer seine Zelle war tot oder ausgebissen zu sehen.',
  behind: 'Serien hinter dieser Zeile',
  ticks: 'Kleine Striche: einzelne Serien, größer bei mehr Zellen.',
  empty: 'Noch nichts zu vergleichen. Beginnen Sie eine Serie, und zählen Sie.',
  planPage: {
    empty:
      'Wie viele Königinnen in Eilage möchten Sie, und bis wann? Schreiben Sie einen Wunsch auf, oder beginnen Sie eine Serie.',
    weeks: 'Woche für Woche',
    batches: 'Serien',
    rows: {
      wanted: 'Bis dahin gewünscht',
      builders: 'Pflegevölker bei der Arbeit',
      boxes: 'Kästchen in Gebrauch',
      away: 'Fort',
      drones: 'Reife Drohnen',
    },
    load: (most: number, of: number) => `${most} von ${of}`,
    tooFew: (missing: number) => `${missing} zu wenig`,
    awayDays: (n: number) => (n === 1 ? '1 Tag' : `${n} Tage`),
    dronesFrom: (day: string) => `ab ${day}`,
    dronesYes: 'ja',
    noDrones: 'nein',
    dronesUnknown:
      'Geben Sie unter Einstellungen an, wann die ersten Drohneneier der Saison gelegt wurden; dann sagt diese Tabelle, ab wann es reife Drohnen gibt.',
    loadLine:
      'Die meisten an einem Tag der Woche, nach den Kalendern aller Serien. Eine noch nicht gezählte Serie braucht so viele Kästchen, wie sie Zellen hat.',
    expected: (lower: number, upper: number, proved: string) =>
      `${lower} bis ${upper} erwiesene Königinnen bis ${proved}`,
    expectedLine:
      'Zu erwartende erwiesene Königinnen: in 9 von 10 Fällen zwischen diesen Zahlen, nach Ihren bisherigen Zählungen; wenige Zählungen machen die Spanne weit.',
    wishes: 'Wer Königinnen möchte',
    wishesEmpty: 'Kein Wunsch ist aufgeschrieben.',
    wishesLine: (wanted: number, proved: number, laying: number) =>
      `Noch gewünscht: ${wanted}. Jetzt in Kästchen: ${proved} erwiesen, ${laying} in Eilage und noch nicht erwiesen.`,
    move: 'Verschieben',
    moveRead: (batch: string) => `${batch} verschieben`,
    toComeLine: (wanted: number, mean: number, lower: number, upper: number, batches: number) =>
      `Gewünscht: ${wanted}. Aus ${batches === 1 ? '1 Serie' : `${batches} Serien`} noch zu erwarten: etwa ${mean} erwiesene ${mean === 1 ? 'Königin' : 'Königinnen'} (${lower} bis ${upper}, als ginge alles schlecht oder alles gut).`,
    toComeNone: (wanted: number) =>
      `Gewünscht: ${wanted}. Keine Serie ist im Gang, die noch Königinnen bringen könnte.`,
    without: 'Nichts gezählt und nichts geplant, darum nicht gerechnet:',
    startLine: 'Wie viele Larven braucht es dafür?',
    columns: {
      who: 'Wer',
      queens: 'Königinnen',
      by: 'Bis',
      handedOver: 'Übergeben',
      open: 'Noch gewünscht',
      note: 'Notiz',
    },
    own: 'eigene Völker',
    settled: (day: string) => `erledigt am ${day}`,
    notReckoned: 'nicht gerechnet',
    who: 'Wer sie möchte',
    whoHint: 'Leer: für eigene Völker. Der Name, wie Sie ihn beim Abgeben oder Verkaufen einer Königin schreiben.',
    queens: 'Königinnen in Eilage',
    by: 'Bis wann',
    note: 'Notiz',
    add: 'Wunsch aufschreiben',
    settle: 'Erledigt',
    reopen: 'Wieder öffnen',
    remove: 'Herausnehmen',
    actsOn: (act: string, who: string, by: string) => `${act}: ${who}, ${by}`,
  },
  week: (n: number) => `Woche ${n}`,
};
