import type {
  cautions as EnglishCautions,
  classroom as EnglishClassroom,
  glossary as EnglishGlossary,
  help as EnglishHelp,
} from '../english/cautions.ts';
import type { Translation } from '../translation.ts';

export const cautions: Translation<typeof EnglishCautions> = {
  title: 'Vorsicht',
  list: [
    'Stiche können bei jedem eine schwere Allergie auslösen, auch nach Jahren ohne Beschwerden. Kennen Sie die Zeichen: Atemnot, Schwellung fern vom Stich, Ohnmachtsgefühl. Halten Sie ein Telefon bereit, und Ihr Medikament, wenn man Ihnen eines gegeben hat, und rufen Sie sofort Hilfe. Haben Sie schon einmal reagiert, arbeiten Sie nicht allein.',
    'Volle Zargen wiegen 20 bis 40 kg. Teilen Sie die Last, oder heben Sie zu zweit.',
    'Zünden Sie den Smoker nur an, wo Feuer erlaubt ist, löschen Sie ihn ganz, und lassen Sie ihn nie heiß stehen oder im Auto mitfahren.',
    'Klingen, Haken, heißes Wachs und warme Stanzen: Schneiden Sie von der Hand weg, schmelzen Sie Wachs im Wasserbad, und lassen Sie es nie allein.',
    'Säuren und andere Behandlungen: nur Mittel, die bei Ihnen zugelassen sind, nach ihrer Anweisung. Schreiben Sie die Behandlung auf, und denken Sie an Königinnen, offene Zellen und Drohnen, bevor Sie dosieren.',
    'Wo Sie eine Brutkrankheit vermuten, versetzen Sie keine Bienen, Waben oder Kästchen zwischen Völkern, und melden Sie es der Behörde, wo das Gesetz es verlangt. Die Königinnenzucht mischt Bienen aus vielen Völkern: Sehen Sie vor jeder Runde Brut und Milben der Spendervölker an.',
    'Das Versetzen oder Verkaufen von Bienen und Königinnen kann eine Registrierung, eine Genehmigung, eine Untersuchung oder ein Zeugnis brauchen. Fragen Sie Ihre zuständige Behörde für Bienen.',
    'Füttern Sie nur Zucker, im Stock, gegen Abend, ohne etwas zu verschütten. Honig und Pollen von anderswo können Krankheiten mitbringen.',
    'Lassen Sie geschlossene Kästchen oder gekäfigte Königinnen nie in der Sonne oder im heißen Auto.',
    'Denken Sie an Nachbarn, Wasser, Vögel und Wespen, wenn Sie einen Platz für Kästchen wählen.',
    'Alle Tage sind Schätzungen. Sehen Sie im Zweifel einen Tag früher nach. Nichts hier ist rechtlicher oder tierärztlicher Rat.',
  ],
};

/** One German word per thing, beside the English glossary of DEVELOPERS.md. */
export const glossary: Translation<typeof EnglishGlossary> = {
  title: 'Wörter',
  list: [
    { word: 'Zuchtvolk', meaning: 'das Volk, aus dessen Larven Sie Königinnen ziehen' },
    {
      word: 'Pflegevolk',
      meaning:
        'das Volk, das die Zellen pflegt; ein Anbrüter beginnt sie, ein Finisher pflegt sie zu Ende, ein Volk kann beides tun',
    },
    { word: 'Serie', meaning: 'ein Satz Zellen, der zusammen gezogen wird' },
    { word: 'Leiste', meaning: 'eine Leiste, ein Wabenrand oder ein Streifen, der Zellen trägt' },
    { word: 'gegeben', meaning: 'Zellen mit Larven, die dem Pflegevolk angeboten wurden' },
    { word: 'angenommen', meaning: 'Zellen, die das Pflegevolk angenommen hat und füttert' },
    { word: 'verdeckelt', meaning: 'mit Wachs geschlossene Zellen' },
    {
      word: 'Finger weg',
      meaning: 'Tage, an denen ein Volk oder Kästchen nicht geöffnet, geschüttelt oder versetzt werden darf',
    },
    { word: 'Begattungskästchen', meaning: 'ein kleiner Kasten, in dem eine Königin begattet wird' },
    { word: 'Kontrolle', meaning: 'einmal ein Volk oder Kästchen öffnen, und was Sie sahen' },
    { word: 'in Eilage', meaning: 'Eier oder junge Brut der neuen Königin waren zu sehen' },
    {
      word: 'erwiesen',
      meaning: 'verdeckelte Arbeiterinnenbrut war zu sehen: Die Königin ist begattet und legt gut',
    },
    { word: 'drohnenbrütig', meaning: 'die Eier der Königin in Arbeiterinnenzellen geben nur Drohnen' },
    { word: 'Mutterlinie', meaning: 'eine Königin und ihre Töchter, deren Töchter und so weiter' },
    {
      word: 'Prüfung',
      meaning:
        'eine Arbeit, die aus etwas folgt, das Sie taten, etwa nach Eiern sehen, nachdem eine Königin zugesetzt wurde',
    },
    { word: 'Verschiebung', meaning: 'ein Tag, der sich verschob, und warum' },
  ],
};

export const help: Translation<typeof EnglishHelp> = {
  search: 'In der Hilfe suchen',
  searchHint: 'ein Wort, eine Taste oder etwas aus der Erklärung',
  found: (n: number) => `${n} gefunden`,
  nothing: 'Nichts mit diesem Namen. Versuchen Sie weniger Buchstaben.',
  title: 'Hilfe und Wörter',
  keysTitle: 'Tasten',
  keys: [
    ['Strg+1 bis 9', 'die Seiten der Seitenleiste'],
    ['Strg+K', 'zu einem Kästchen, einem Volk, einer Königin, einer Serie oder Seite gehen, oder einen Befehl geben'],
    ['Strg+N', 'eine Serie beginnen'],
    ['Strg+E', 'Kontrollen eintragen'],
    ['Strg+B', 'Zellen in Kästchen setzen'],
    ['Strg+R', 'eintragen, was wirklich zu sehen war'],
    ['Strg+L', 'Etiketten'],
    ['Strg+P', 'diese Ansicht drucken; von Heute aus auch den Standzettel'],
    ['Strg+Z', 'die letzte Änderung zurücknehmen; in einem Feld die eben getippten Buchstaben'],
    ['Strg+Y, Strg+Umschalt+Z', 'wiederholen'],
    [
      'G, S, H, C, D, L',
      'auf der Seite einer Königin: weggeben, verkaufen, in ein Volk, Käfig, tot, verloren; in den Einstellungen abzuschalten',
    ],
    [
      'Eingabe, Leertaste, S, P',
      'auf einer Arbeit von Heute (Tab geht dorthin): öffnen, heute erledigt, verschieben, drucken, was dazugehört; Pfeil auf und ab gehen zur nächsten; die Buchstaben sind in den Einstellungen abzuschalten',
    ],
    [
      'Umschalt+Links, Umschalt+Rechts, M',
      'auf einer geplanten Serie im Saisonplan: einen Tag früher, einen Tag später, ein anderer Tag',
    ],
    ['Alt+Links, Alt+Rechts', 'zurück und vor'],
    ['F1', 'diese Seite'],
  ],
  figuresTitle: 'Wie die Zahlen gerechnet sind',
  figures: [
    'Ein Anteil steht immer neben den Zahlen, auf denen er ruht. „Nicht gezählt“ ist nicht null: Eine Stufe ohne beide Zahlen bleibt weg.',
    'Eine noch laufende Serie ist kein Verlust: Sie geht in eine Zahl ein, sobald ihre Zählungen da sind.',
    'Absichtlich weggenommene Zellen und verdeckelte Zellen, die nicht in Kästchen kamen, zählen bei der nächsten Stufe nicht mit.',
    'Bei den Bewertungen eines Volks gelten für Sanftmut und Wabensitz die Mittel und für den Schwarmtrieb der niedrigste Wert; weniger als vier gelten als zu wenige.',
    'Ein weisellos gefundenes Kästchen zählt als geschlüpft, außer seine Zelle war tot oder ausgebissen zu sehen.',
    'Die Spanne neben einem Anteil in der Tabelle ist die von Wilson: In etwa 9 von 10 Fällen liegt der wahre Anteil darin, wenn alle Zellen gleich wären. Das Bild unter der Tabelle berücksichtigt, dass Serien sich unterscheiden, und die Worte darunter auch.',
  ],
};

export const classroom: Translation<typeof EnglishClassroom> = {
  title: 'Kurs',
  line: 'Der Zeitplan jedes Verfahrens, von einem erdachten ersten Tag an, mit Was, Warum und Vorsicht für jeden Schritt. Keine echten Daten werden benutzt.',
  method: 'Verfahren',
  comb: 'Wabe',
  builderType: 'Pflegevolk eingerichtet',
  day: 'Tag der Larvengabe',
  print: 'Diesen Zeitplan drucken',
  columns: {
    day: 'Tag',
    n: 'Tag nach der Larvengabe',
    step: 'Schritt',
    what: 'Was wir tun',
    why: 'Warum',
    caution: 'Vorsicht',
  },
  handsOff: 'Finger weg',
  sources: 'Quellen der Tage',
  smallNumbers: {
    title: 'Kleine Zahlen',
    line: 'Sechs Serien von derselben Hand, mit demselben Verfahren und demselben Glück für alle. Welche war die beste? Geben Sie andere Zahlen ein und sehen Sie, wie weit jeder Anteil zu den übrigen hingezogen wird.',
    of: 'Larven, die jede Serie bekam',
    unclear: 'Geben Sie ganze Zahlen ein: 1 bis 200 Larven, und nicht mehr angenommen als gegeben.',
    columns: {
      taken: 'Angenommen',
      plain: 'Schlichter Anteil',
      byHand: 'Zum Mittel gezogen, von Hand',
      evened: 'Dasselbe auf geebneter Skala',
      model: 'Nach diesem Arbeitsbuch, in 9 von 10 Fällen',
    },
    takenOf: (row: number) => `Angenommen, Serie ${row}`,
    more: 'Eine Serie mehr',
    fewer: 'Eine Serie weniger',
    lesson: (kept: number | null) =>
      kept === null
        ? 'Die Regel von Hand braucht mindestens vier gleich große Serien.'
        : `Von Hand: Nehmen Sie das Mittel aller Anteile, und behalten Sie vom Abstand jedes einzelnen nur ${Math.round(100 * kept)} von 100 (Regel von James und Stein). Die beste Serie hatte auch Glück, die schlechteste Pech; die nächsten werden näher an der Mitte liegen.`,
    ranges: {
      title: 'Andere Wege, die Spanne zu ziehen',
      batch: 'Angenommen',
      model: 'Dieses Arbeitsbuch',
      ways: { wilson: 'Wilson', jeffreys: 'Jeffreys', exact: 'Exakt' },
      takenOf: (taken: string, of: string) => `${taken} von ${of}`,
      why: 'Wilson, Jeffreys und der exakte Weg sehen nur eine Serie an und zählen jede Zelle wie einen Wurf derselben Münze. Wilson und Jeffreys enthalten den wahren Anteil im Mittel 9-mal in 10; der exakte Weg enthält ihn mindestens so oft und ist deshalb breiter. Dieses Arbeitsbuch rechnet auch damit, dass Serien sich unterscheiden, was eine Spanne breiter macht, und lässt die anderen Serien mitreden, was sie zu ihnen hinzieht und schmaler macht.',
    },
  },
};
