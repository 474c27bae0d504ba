import type {
  BOX_TYPE_WORDS as EnglishBoxTypes,
  BUILDER_TYPE_WORDS as EnglishBuilderTypes,
  COMB_WORDS as EnglishCombs,
  METHOD_WORDS as EnglishMethods,
} from '../english/methods.ts';
import type { Translation } from '../translation.ts';

export const METHOD_WORDS: Translation<typeof EnglishMethods> = {
  'larva-grafting': {
    name: 'Umlarven',
    line: 'Junge Larven werden aus ihrer Wabe in Näpfchen gehoben und einem Pflegevolk gegeben. Genau, und so viele Sie wollen; braucht gute Augen und eine ruhige Hand.',
  },
  'larva-grafting-double': {
    name: 'Umlarven, doppelt',
    line: 'Larven werden zweimal umgelarvt, im Abstand von einem Tag: Die ersten füllen nur die Näpfchen mit Futtersaft. Etwas schwerere Königinnen für doppelte Arbeit.',
  },
  'cut-comb-edge': {
    name: 'Bogenschnitt',
    line: 'Eine Wabe mit jungen Larven wird beschnitten, und das Pflegevolk zieht am Rand Zellen. Kein feines Werkzeug, keine Larve wird berührt; sechs bis zwölf Zellen.',
  },
  'comb-strip': {
    name: 'Wabenstreifen',
    line: 'Eine Wabe mit jungen Larven wird in Streifen von einer Zelle Breite geschnitten, die mit den Zellen nach unten bei weisellosen Bienen hängen.',
  },
  'flat-comb': {
    name: 'Flache Wabe',
    line: 'Eine Wabe frisch geschlüpfter Larven liegt mit der Seite nach unten über einem weisellosen Pflegevolk. Viele Zellen mit wenig Arbeit; das Alter ist gemischt.',
  },
  'cell-punch': {
    name: 'Ausstanzen',
    line: 'Einzelne Zellen werden mit unberührter Larve und Futter aus einer Wabe gestanzt und an einer Leiste befestigt.',
  },
  'caged-laying-plugs': {
    name: 'Legekasten mit Stopfen',
    line: 'Die Königin legt in einem geschlossenen Kasten mit herausnehmbaren Zellböden. Keine Larve wird berührt, und jedes Alter ist bekannt.',
  },
  'emergency-cells': {
    name: 'Nachschaffungszellen',
    line: 'Die Königin wird weggenommen oder das Volk geteilt, und die Bienen ziehen neue Königinnen aus der eigenen Brut.',
  },
  'swarm-cells': {
    name: 'Schwarmzellen',
    line: 'Zellen, die ein schwarmlustiges Volk gebaut hat, werden verteilt. Billig; aber es begünstigt Völker, die schwärmen.',
  },
  'supersedure-cells': {
    name: 'Stille Umweiselung',
    line: 'Das Volk ersetzt seine Königin von selbst. Meist beobachtet, selten genutzt.',
  },
};

export const COMB_WORDS: Translation<typeof EnglishCombs> = {
  drawn: {
    name: 'ausgebaute Wabe',
    line: 'Binnen eines Tages bestiftet: Larven vier Tage, nachdem sie hineinkam.',
  },
  foundation: {
    name: 'Streifen Mittelwand',
    line: 'Erst ausgebaut, dann bestiftet: Larven sieben bis acht Tage, nachdem sie hineinkamen.',
  },
};

export const BUILDER_TYPE_WORDS: Translation<typeof EnglishBuilderTypes> = {
  queenless: { name: 'durchgehend weisellos', line: 'Ein Volk ohne Königin beginnt und pflegt die Zellen zu Ende.' },
  'starter-then-finisher': {
    name: 'Anbrüter, dann Finisher',
    line: 'Ein Kasten geschüttelter Ammenbienen beginnt die Zellen, ein starkes Volk pflegt sie zu Ende.',
  },
  'queenright-over-excluder': {
    name: 'weiselrichtig, über dem Absperrgitter',
    line: 'Die Königin bleibt unter einem Absperrgitter; darüber werden Zellen gezogen.',
  },
  'divider-board': {
    name: 'mit Trennbrett',
    line: 'Ein Schieber trennt den oberen Teil einen Tag lang von der Königin und öffnet sich dann wieder.',
  },
  'queen-parked-above': {
    name: 'Königin oben abgestellt',
    line: 'Die Zargen der Königin stehen ein bis zwei Tage über einem Gitter und kommen dann unter ein Absperrgitter zurück.',
  },
};

export const BOX_TYPE_WORDS: Translation<typeof EnglishBoxTypes> = {
  mini: { name: 'Mini-Kästchen', line: 'Drei bis fünf kleine Waben, etwa eine Tasse Bienen.' },
  'half-frame': {
    name: 'Halbrähmchen-Kästchen',
    line: 'Vier bis acht halbe Waben, oft in zwei geteilt; hält die ganze Saison.',
  },
  'two-three-frame': { name: '2–3-Waben-Ableger', line: 'Waben in voller Größe, eine mit Brut.' },
  'four-six-frame': { name: '4–6-Waben-Ableger', line: 'Ein kleines Volk; die Königin kann darin bleiben.' },
};
