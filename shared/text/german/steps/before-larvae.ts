import type { BEFORE_LARVAE as english } from '../../english/steps/before-larvae.ts';
import type { Translation } from '../../translation.ts';

export const BEFORE_LARVAE: Translation<typeof english> = {
  'feed-start': {
    what: 'Geben Sie dem Pflegevolk jeden Tag einen halben bis einen Liter dünne Zuckerlösung, und sehen Sie nach, dass dort, wo die Zellen hängen werden, eine Pollenwabe steht. So weiter, bis die Zellen verdeckelt sind, außer es kommt Nektar herein.',
    why: 'Zellen werden aus dem gebaut, was Ammenbienen im Überfluss haben. In einer Woche ohne Nektar beginnt ein Volk wenige Zellen und füttert sie schlecht.',
    caution:
      'Füttern Sie im Stock, am Abend, und verschütten Sie nichts: Räuberei beginnt in Minuten. Nur Zucker; Honig oder Pollen von anderswo kann Krankheiten mitbringen. Halten Sie die Zuckerlösung aus Honig heraus, den Sie essen oder verkaufen wollen.',
  },
  'insert-frame': {
    what: 'Hängen Sie eine leere, dunkle Arbeiterinnenwabe mitten ins Brutnest des Zuchtvolks. Schreiben Sie das heutige Datum auf den Oberträger.',
    why: 'Die Königin bestiftet sie binnen etwa einem Tag. Dann sind alle ihre Larven fast gleich alt, und Sie wissen, wie alt.',
    caution:
      'Sehen Sie das Zuchtvolk zuerst auf Krankheiten und Milben durch. Wenn Sie eingesunkene, riechende oder kalkige Brut sehen, versetzen Sie keine Wabe und fragen Sie Ihren Bienensachverständigen oder Berater.',
    byMethod: {
      'cut-comb-edge': {
        what: 'Hängen Sie den Rahmen zum Schneiden mitten ins Brutnest des Zuchtvolks: eine frisch ausgebaute Wabe oder einen Rahmen mit zwei bis vier spitzen Streifen Mittelwand. Schreiben Sie das heutige Datum auf den Oberträger.',
        why: 'Die Bienen bauen nach unten, und die Königin folgt. Nach einigen Tagen stehen die jüngsten Larven am unteren Rand, wo Sie schneiden werden. Streifen brauchen drei bis vier Tage mehr als ausgebaute Waben.',
        caution:
          'Ohne Tracht oder Futter werden Streifen nicht ausgebaut: Sehen Sie nach drei Tagen nach. Bevor Sie das Zuchtvolk dafür öffnen, sehen Sie es auf Krankheiten durch; verdächtige Brut darf nicht versetzt werden.',
      },
      'comb-strip': {
        what: 'Hängen Sie eine helle, leere Arbeiterinnenwabe mitten ins Brutnest des Zuchtvolks und zeichnen Sie sie.',
        why: 'In vier Tagen enthält sie frisch geschlüpfte Larven. Helle Waben lassen sich sauber in Streifen schneiden; alte dunkle reißen.',
      },
      'flat-comb': {
        what: 'Hängen Sie eine neue, helle Arbeiterinnenwabe mitten ins Brutnest des Zuchtvolks, bis eine ganze Seite voller Eier und frisch geschlüpfter Larven ist.',
        why: 'Die Wabe wird mit der Seite nach unten über dem Pflegevolk liegen, also muss sie gut besetzt und fest sein.',
      },
      'cell-punch': {
        what: 'Hängen Sie eine Arbeiterinnenwabe, die Sie entbehren können, ins Brutnest des Zuchtvolks und zeichnen Sie sie.',
        why: 'Sie werden einzelne Zellen mit Larve und Futter unberührt ausstanzen. Die Wabe bleibt voller Löcher zurück.',
      },
      'caged-laying-plugs': {
        title: 'Den Legekasten ins Zuchtvolk hängen',
        what: 'Hängen Sie den Legekasten ohne die Königin für ein bis zwei Tage mitten ins Brutnest des Zuchtvolks.',
        why: 'Bienen putzen und polieren die Zellen. In Zellen, die noch nach Laden riechen, legt eine Königin nur zögernd.',
        caution:
          'Schaffen Sie Platz, indem Sie eine Wabe ohne Brut herausnehmen. Bewahren Sie diese Wabe so auf, dass Räuber und Wachsmotten nicht an sie kommen.',
      },
    },
  },
  'cage-queen': {
    what: 'Suchen Sie die Königin des Zuchtvolks, lassen Sie sie in den Legekasten laufen und schließen Sie ihn. Schreiben Sie die Stunde auf.',
    why: 'Alle Eier im Kasten sind dann binnen eines Tages gelegt, sodass das Alter jeder Larve auf wenige Stunden bekannt ist.',
    caution:
      'Fassen Sie sie sanft an, über dem offenen Volk und aus dem Wind. Finden Sie sie in einer Viertelstunde nicht, schließen Sie und versuchen es morgen: Ein verkühltes Brutnest kostet mehr als einen Tag.',
  },
  'release-queen': {
    what: 'Sehen Sie im Legekasten nach Eiern. Sind es genug, lassen Sie die Königin 12 bis 24 Stunden nach dem Einsperren frei, und lassen Sie den Kasten im Brutnest.',
    why: 'Ein Tag Legen genügt. Länger, und die Larven wären verschieden alt; auch vermisst das Volk sie.',
    caution:
      'Nach einem Tag keine Eier: Lassen Sie sie 12 bis 24 Stunden länger darin, nie über anderthalb Tage. Sind dann keine da, lassen Sie sie frei und gönnen ihr drei Tage Ruhe.',
  },
  'first-transfer': {
    what: 'Heben Sie junge Larven irgendeines guten Volks in die Näpfchen und geben Sie sie dem Pflegevolk. Sie bereiten nur die Näpfchen vor.',
    why: 'Bienen füllen die Näpfchen mit Weiselfuttersaft. Morgen nehmen Sie diese Larven heraus und legen die ausgewählten auf den Saft. Doppeltes Umlarven gibt etwas schwerere Königinnen und kostet doppelte Arbeit.',
    caution:
      'Jede erste Larve muss morgen heraus. Eine vergessene schlüpft etwa einen Tag früher und tötet die anderen.',
  },
  'make-queenless': {
    what: 'Nehmen Sie die Königin des Pflegevolks mit zwei oder drei Waben weg, lassen Sie wenig offene Brut, und schütteln Sie junge Bienen von vier bis sechs Waben dazu. Füttern Sie.',
    why: 'Bienen, die ihre Königin vermissen und keine eigenen Larven haben, nehmen die Larven an, die Sie geben. Nach einem halben bis zwei Tagen sind sie so weit.',
    caution:
      'Seien Sie sicher, dass die Königin draußen ist und keine zweite darin: Eine versteckte Königin, auch eine unbegattete, ist der häufigste Grund, wenn gar nichts angenommen wird. Ein Pflegevolk ist voller Bienen und schwer, also heben Sie zu zweit und tragen Sie den Schleier.',
    byBuilder: {
      'starter-then-finisher': {
        title: 'Den Anbrüterkasten füllen',
        what: 'Schütteln Sie zwei bis sechs Stunden, bevor die Larven kommen, ein bis zwei Kilo Ammenbienen in einen belüfteten Kasten: keine Königin, keine offene Brut; eine Pollenwabe, ein oder zwei Futterwaben, einen nassen Schwamm und eine Lücke für die Leiste. Halten Sie ihn dunkel und kühl.',
        why: 'Eingesperrte Ammenbienen mit Futter, ohne Königin und ohne Brut beginnen binnen Stunden Zellen.',
        caution:
          'Sehen Sie zweimal nach, dass keine Königin unter den Bienen ist, die Sie schütteln. Ein geschlossener Kasten überhitzt schnell: Schatten, Luft und Wasser, und nie in der Sonne oder im geparkten Auto.',
      },
      'queenright-over-excluder': {
        title: 'Das Pflegevolk über dem Absperrgitter einrichten',
        what: 'Setzen Sie die Königin in die untere Zarge unter ein Absperrgitter. Hängen Sie zwei Waben mit offener Brut und eine mit Pollen in die obere Zarge, mit einer Lücke für die Leiste dazwischen.',
        why: 'Ammenbienen folgen der Brut nach oben. Weit von der Königin beginnen sie Zellen, und sie legt unten weiter: Das Volk dient die ganze Saison.',
        caution:
          'Prüfen Sie das Absperrgitter auf Lücken. Auf hochgehängten Waben bauen die Bienen eigene Zellen: Zerstören Sie sie, bevor Sie Larven geben, und noch einmal binnen der Woche. Volle Zargen sind schwer; heben Sie zu zweit.',
      },
      'divider-board': {
        title: 'Den Schieber des Trennbretts schließen',
        what: 'Schließen Sie den Schieber, öffnen Sie das untere hintere Flugloch, und nehmen Sie junge offene Brut aus dem oberen Teil.',
        why: 'Die oberen Bienen verlieren die Fühlung mit ihrer Königin und sind in einem halben bis einem Tag bereit für Larven.',
        caution: 'Vergewissern Sie sich, dass beide Hälften ein offenes Flugloch und Luft haben, bevor Sie gehen.',
      },
      'queen-parked-above': {
        title: 'Die Königin oben abstellen',
        what: 'Setzen Sie die Zargen mit Königin und offener Brut über den Gitterboden mit eigenem Flugloch. Lassen Sie die Flugbienen sich im unteren Teil sammeln, in den die Larven kommen.',
        why: 'Die unteren Bienen sind viele und fühlen sich weisellos. Die Königin kommt in ein bis zwei Tagen wieder nach unten, bevor sie endgültig vermisst wird.',
        caution: 'Heben Sie zu zweit. Sehen Sie nach, dass der obere Teil Futter hat und sein Flugloch offen ist.',
      },
    },
  },
  'remove-queen': {
    what: 'Nehmen Sie die Königin heraus, oder teilen Sie das Volk in zwei gleiche Hälften mit Eiern, junger Brut, Futter und Bienen in beiden. Schreiben Sie die Stunde auf.',
    why: 'Binnen eines Tages beginnen die Bienen Nachschaffungszellen über jungen Larven. Von dieser Stunde an zählen alle Tage.',
    caution:
      'Beide Hälften brauchen Eier oder Larven unter zwei Tagen, sonst kann die ohne Königin keine ziehen. Das Versetzen von Bienen zwischen Orten kann bei Ihnen eine Genehmigung brauchen.',
    byBuilder: {
      'divider-board': {
        title: 'Das Trennbrett einsetzen, Schieber offen',
        what: 'Königin unten unter ein Absperrgitter; offene Brut, Ammenbienen und Pollen oben; dazwischen das Brett mit offenem Schieber. Drehen Sie den Stock so, dass die Flugbienen das obere Flugloch benutzen. Hängen Sie die Näpfchen zum Putzen ein.',
        why: 'In zwei Tagen füllt sich der obere Teil mit Bienen und gewöhnt sich an den Platz, bevor der Schieber ihn abtrennt.',
        caution: 'Suchen Sie die Königin, bevor Sie schließen: Sie muss unten sein. Heben Sie zu zweit.',
      },
    },
  },
  'give-larvae': {
    what: 'Zerstören Sie jede Zelle, die das Pflegevolk von selbst begonnen hat; schütteln Sie die Bienen ab, um sie zu sehen. Larven Sie dann Larven von 12 bis 24 Stunden, so groß wie ein Ei und in einem Tropfen Futtersaft, in die Näpfchen um, und hängen Sie die Leiste in die Lücke.',
    why: 'Das ist Tag 0. So junge Larven werden die schwersten Königinnen; einen Tag älter, und Annahme wie Gewicht sinken. Alle späteren Tage sind von jetzt an gerechnet.',
    caution:
      'Arbeiten Sie warm und ohne Sonne und Wind, mit einem feuchten Tuch über der Leiste, eine Leiste in zehn Minuten. Bienen stechen: Halten Sie ein Telefon bereit, und wer je heftig auf Stiche reagiert hat, arbeitet nicht allein.',
    byMethod: {
      'larva-grafting-double': {
        title: 'Die Larven durch die ausgewählten ersetzen',
        what: 'Heben Sie jede erste Larve aus ihrem Futtersaft und legen Sie eine ausgewählte Larve von 12 bis 24 Stunden darauf. Hängen Sie die Leiste zurück.',
        why: 'Das ist Tag 0: Alle späteren Tage sind von diesem zweiten Umlarven an gerechnet.',
        caution:
          'Zählen Sie die Larven, die Sie herausheben. Eine vergessene schlüpft etwa einen Tag früher und tötet die anderen. Halten Sie ein Telefon bereit, und arbeiten Sie nicht allein, wenn Sie je heftig auf Stiche reagiert haben.',
      },
      'cut-comb-edge': {
        title: 'Den Wabenrand schneiden und geben',
        what: 'Zerstören Sie die eigenen Zellen des Pflegevolks. Schneiden Sie die Wabe mit einem warmen, scharfen Messer bis zu den jüngsten Larven zurück, und zerdrücken Sie am Rand zwei von je drei Larven. Hängen Sie die Wabe ins Pflegevolk.',
        why: 'Das ist Tag 0. Bienen ziehen Weiselzellen aus den Larven, die am Rand frei stehen, und ausgedünnte Larven geben Zellen, die sich ohne Schaden trennen lassen.',
        caution:
          'Sehen Sie zuerst den Rand an: Sind dort Eier statt Larven, kommt alles ein bis drei Tage später, also vermerken Sie es. Schneiden Sie von der Hand weg. Verkühlen Sie die Wabe nicht; ein feuchtes Tuch und zehn Minuten, nicht mehr.',
      },
      'comb-strip': {
        title: 'Streifen schneiden und geben',
        what: 'Schneiden Sie die Wabe in Streifen von einer Zelle Breite, zerdrücken Sie zwei von je drei Larven, und befestigen Sie die Streifen mit Wachs unter einer Leiste, die Zellen nach unten. Hängen Sie sie zu den weisellosen Bienen.',
        why: 'Das ist Tag 0. Die Zellen hängen einzeln, und es bleibt Platz, sie später auseinanderzuschneiden.',
        caution:
          'Schmelzen Sie Wachs im Wasserbad, nie über offener Flamme und nie unbeaufsichtigt. Biegen Sie den Streifen nicht stark: Bienen werfen sonst die Larven hinaus. Schneiden Sie von der Hand weg.',
      },
      'flat-comb': {
        title: 'Die Wabe flach über das Pflegevolk legen',
        what: 'Lassen Sie jede vierte Reihe stehen und darin eine von drei Larven; zerdrücken Sie alle übrigen. Legen Sie die Wabe mit der Seite nach unten auf einen Abstandsrahmen über die weisellosen Bienen, und decken Sie sie warm zu.',
        why: 'Das ist Tag 0. Bienen ziehen aus den übrigen Larven Zellen nach unten. Drei bis vier Zentimeter Abstand geben ihnen Platz.',
        caution:
          'Das Alter ist gemischt, also entscheidet die älteste Larve: Achten Sie auf den frühesten Tag. Decken Sie gleich gegen Kälte zu. Bleiben Sie bei 20 Zellen, so viele auch begonnen sind.',
      },
      'cell-punch': {
        title: 'Zellen ausstanzen und geben',
        what: 'Stanzen Sie einzelne Zellen mit Larven von 12 bis 24 Stunden aus, kürzen Sie sie, und befestigen Sie sie mit Wachs an der Leiste, die Öffnung nach unten. Hängen Sie die Leiste ins Pflegevolk.',
        why: 'Das ist Tag 0. Die Larve und ihr Futter werden nie berührt.',
        caution:
          'Wärmen Sie das Werkzeug an, aber nicht heißer, als die Hand es verträgt. Schmelzen Sie Wachs im Wasserbad, nie unbeaufsichtigt. Lassen Sie die Wabe bei der Arbeit nicht auskühlen.',
      },
      'caged-laying-plugs': {
        title: 'Die Larven auf ihren Stopfen versetzen',
        what: 'Ziehen Sie die Stopfen mit Larven bis zu einem Tag Alter, und befestigen Sie sie an der Leiste, die Näpfchen nach unten. Hängen Sie die Leiste ins Pflegevolk.',
        why: 'Das ist Tag 0. Vier bis fünf Tage nach dem Einsperren der Königin sind Larven da: Die Quellen sind uneins, weil das Legen oft spät beginnt.',
        caution:
          'Noch keine Larven: Warten Sie einen Tag. Larven, die mehr als ein Drittel des Bodens füllen: Tun Sie es heute. Kippen Sie die Stopfen nicht, die Larve liegt lose auf ihrem Futter.',
      },
    },
  },
};
