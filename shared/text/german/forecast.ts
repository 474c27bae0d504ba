import type { ExpectedCount } from '../../contract/forecast.ts';
import type { forecast as english } from '../english/forecast.ts';
import { amount } from '../share-text.ts';
import type { Translation } from '../translation.ts';

const queens = (n: number): string => (n === 1 ? '1 Königin' : `${n} Königinnen`);
const span = (from: number, to: number): string => (from === to ? String(from) : `${from} bis ${to}`);
const batchesN = (n: number): string => (n === 1 ? '1 Serie' : `${n} Serien`);

export const forecast: Translation<typeof english> = {
  form: {
    title: 'Was ich möchte',
    wanted: 'Königinnen in Eilage',
    surely: 'Wie sicher',
    times: (times: number, of: number) => `in ${times} von ${of} Fällen`,
    method: 'Verfahren',
    untried: 'eines, das ich nie versucht habe',
    methodWith: (method: string, batches: number) => `${method} (${batchesN(batches)} gezählt)`,
    batches: 'Serien',
    asMany: 'so wenige, wie genügen',
    batchesN: (n: number) => (n === 1 ? '1 Serie, ein Pflegevolk' : `${n} Serien, je ein Pflegevolk`),
    perBuilder: 'Höchste Zahl Zellen, die ein Pflegevolk zu Ende pflegt',
    perBuilderHint: 'Leer: keine Grenze',
    boxes: 'Vorhandene Begattungskästchen',
    boxesHint: (free: number) => `Leer: so viele, wie es braucht. Jetzt frei: ${free}`,
    larvae: 'Larven je Serie',
    larvaeHint: 'Leer: die wenigsten suchen',
    whatIf: 'Was wäre, wenn',
    whatIfHint: 'Lassen Sie eine Stufe, wie sie gezählt wurde, oder versuchen Sie einen anderen Anteil.',
    asCounted: 'wie gezählt',
    wholeTo: (most: number) => `Geben Sie eine ganze Zahl von 1 bis ${most} ein, oder lassen Sie das Feld leer.`,
    try: (stage: string) => `Einen anderen Anteil versuchen: ${stage}`,
    share: (stage: string) => `Versuchter Anteil: ${stage}`,
  },
  answer: {
    title: 'Was es braucht',
    reckoning: 'Es wird gerechnet …',
    one: (larvae: number) => `Geben Sie ${larvae} Larven in einer Serie`,
    many: (each: number, batches: number) =>
      `Geben Sie je ${each} Larven in ${batches} Serien (${each * batches} im Ganzen, ein Pflegevolk für jede)`,
    boxes: (boxes: number) => `und halten Sie ${boxes === 1 ? 'ein' : boxes} Begattungskästchen bereit`,
    promise: (wanted: number, times: number) =>
      `Dann kommen ${times === 20 ? 'so gut wie immer' : `in etwa ${times} von 20 Fällen`} mindestens ${queens(wanted)} in Eilage.`,
    likely: ({ likelyFrom, likelyTo, atLeast }: ExpectedCount) =>
      `Jedes zweite Mal kommen ${span(likelyFrom, likelyTo)} in Eilage; ${
        atLeast === 0
          ? 'dass es keine wird, ist nicht auszuschließen'
          : `in 9 von 10 Fällen sind es mindestens ${atLeast}`
      }.`,
    safety: (mean: number) =>
      `Im Mittel kommen ${amount(Math.round(mean), 'de')} in Eilage: Was über Ihrer Zahl liegt, ist der Preis der Sicherheit, weil Serien sich unterscheiden.`,
    notReached: (wanted: number, times: number) =>
      `So sicher kann man sich ${queens(wanted)} nicht sein: Selbst mit den meisten Larven gelingt es nur in etwa ${times} von 20 Fällen.`,
    heldBackBy: {
      builder: 'Das Pflegevolk hält es auf: Mehr Serien, oder mehr Zellen je Pflegevolk, würden helfen.',
      boxes: 'Die Kästchen halten es auf: Mehr Kästchen würden helfen.',
    },
    askLess: 'Verlangen Sie weniger Königinnen, weniger Sicherheit, oder nehmen Sie mehr Serien.',
    guesswork: 'Von diesem Verfahren wurde noch keine Serie gezählt, darum sind diese Zahlen größtenteils geraten.',
    together:
      'In diesem Arbeitsbuch waren gute Serien auf mehreren Stufen zugleich gut. Die wahre Streuung ist größer als hier gesagt.',
    onTheWay: 'Unterwegs',
    way: ['Larven gegeben', 'angenommen', 'verdeckelt', 'geschlüpft', 'in Eilage'],
    rows: 'Mehr Larven, weniger Kästchen',
    rowColumns: { larvae: 'Larven je Serie', boxes: 'Kästchen', chance: 'Genug Königinnen' },
    noBoxes: 'nicht mit diesen Kästchen',
    times: (times: number) => (times === 20 ? 'fast immer' : times === 0 ? 'kaum je' : `in ${times} von 20 Fällen`),
    losses: 'Wo sie verloren gehen',
    lossColumns: {
      stage: 'Stufe',
      rate: 'Anteil, der weitergeht',
      lost: 'Verloren von 100 Larven',
      largest: 'Verliert am meisten',
      worth: 'Königinnen aus 100 Larven, wäre sie so gut wie in Ihrem besten Drittel',
    },
    lost: (mean: number, lower: number, upper: number) =>
      `${Math.round(mean)} (${span(Math.round(lower), Math.round(upper))})`,
    worth: (gained: number) => {
      const whole = Math.round(gained);
      return whole === 0 ? 'keine Änderung' : `${whole} mehr`;
    },
    lossNote: (laying: number) =>
      `Von 100 Larven kommen etwa ${Math.round(laying)} in Eilage. Frühe Stufen verlieren viele billige Larven, die letzten teure Königinnen: Sehen Sie beide Spalten an.`,
  },
  batch: {
    title: 'Gegen das, was zu erwarten war',
    columns: { stage: 'Stufe', came: 'Gekommen', expected: 'Erwartet', verdict: 'Wie es steht' },
    came: (came: number, of: number) => `${came} von ${of}`,
    expected: ({ lower, upper }: ExpectedCount) => span(lower, upper),
    standing: { 'as-expected': 'wie erwartet', fewer: 'weniger als erwartet', more: 'mehr als erwartet' },
    restsOn: (method: string, batches: number) =>
      batches === 0
        ? `Keine andere Serie mit ${method} wurde gezählt, darum sind die Spannen weit.`
        : `Die Spannen gelten in 9 von 10 Fällen und ruhen auf ${batches === 1 ? 'einer anderen Serie' : `${batches} anderen Serien`} mit ${method}.`,
    bars: (better: string, worse: string) =>
      `${better}, aber nur ${worse}: Das ist mehr als Glück. Denken Sie daran, wo die Leiste hing, an ihre Larven und wer daran gearbeitet hat.`,
    bar: {
      take: (n: number, came: number, of: number) => `Leiste ${n}: ${came} von ${of} angenommen`,
      sealing: (n: number, came: number, of: number) => `Leiste ${n}: ${came} von ${of} verdeckelt`,
    },
    toCome: {
      planned: (of: number) => `Wenn ${of} Larven gegeben werden, wie geplant`,
      given: (of: number) => `Aus ${of} gegebenen Larven`,
      taken: (of: number) => `Aus ${of} angenommenen Zellen`,
      sealed: (of: number) => `Aus ${of} verdeckelten Zellen, wenn jede ein Kästchen bekommt`,
      placed: (of: number) => `Aus ${of} Zellen in Kästchen`,
    },
    queens: ({ likelyFrom, likelyTo, atLeast }: ExpectedCount) =>
      `jedes zweite Mal ${span(likelyFrom, likelyTo)} erwiesene Königinnen; ${
        atLeast === 0 ? 'dass es keine wird, ist nicht auszuschließen' : `in 9 von 10 Fällen mindestens ${atLeast}`
      }.`,
  },
  hive: {
    title: 'Gegen die übrigen',
    columns: { stage: 'Stufe', own: 'Dieses Volk', rest: 'Die anderen', verdict: 'Wie es steht' },
    own: (percent: string, range: string, batches: number) =>
      `${percent}, in 9 von 10 Fällen ${range}, ${batchesN(batches)}`,
    rest: (percent: string, batches: number) => `${percent}, ${batchesN(batches)}`,
    nobody: 'kein anderes Volk gezählt',
    hive: {
      'cannot-tell': 'nicht zu unterscheiden',
      leaning: 'neigt sich zu diesem Volk',
      probably: 'wahrscheinlich besser',
      'very-likely': 'sehr wahrscheinlich besser',
      'as-good-as-certain': 'so gut wie sicher besser',
    },
    others: {
      'cannot-tell': 'nicht zu unterscheiden',
      leaning: 'neigt sich zu den anderen',
      probably: 'wahrscheinlich schlechter',
      'very-likely': 'sehr wahrscheinlich schlechter',
      'as-good-as-certain': 'so gut wie sicher schlechter',
    },
    note: 'Wenige Serien werden zu den übrigen hingezogen; die Spannen berücksichtigen, dass Serien sich unterscheiden.',
  },
};
