import type { BOXES as english } from '../../english/steps/boxes.ts';
import type { Translation } from '../../translation.ts';

export const BOXES: Translation<typeof english> = {
  'stock-boxes': {
    what: 'Schütteln Sie junge Bienen von offener Brut in jedes Kästchen, eine gute Tasse in ein Mini-Kästchen, eine Brutwabe und zwei Waben Bienen in einen Ableger. Geben Sie Futter, schließen Sie das Flugloch, und stellen Sie sie kühl und dunkel.',
    why: 'Einen Tag oder länger ohne Königin eingesperrt, kommen die Bienen zur Ruhe, vergessen ihr Volk und nehmen eine Zelle gern an.',
    caution:
      'Keine Königin und keine Drohnen unter den Bienen. Lassen Sie geschlossene Kästchen nie in der Sonne oder im Auto: Die Bienen sterben in Minuten. Das Versetzen von Bienen zwischen Orten kann bei Ihnen eine Genehmigung oder ein Gesundheitszeugnis brauchen.',
  },
  'place-cells': {
    what: 'Tragen Sie die Zellen aufrecht und warm, eine in jedes Kästchen, die Spitze nach unten zwischen zwei Waben. Schreiben Sie auf, welche Zelle wohin kam. Überzählige Zellen kommen in Käfige.',
    why: 'Schlupfreife Zellen vertragen es, bewegt zu werden; zwei Tage vor dem Schlupf ist die Zeit dafür. Der letzte erlaubte Tag ist von der ältesten Larve gerechnet, die es geben kann, weniger einen halben Tag.',
    caution:
      'Sehen Sie einen Tag früher nach, wenn das Alter der Larven unsicher ist: Die erste geschlüpfte Königin tötet die anderen in ihren Zellen. Keine Kälte, keine Stöße, keine Sonne.',
    byMethod: {
      'cut-comb-edge': {
        what: 'Schneiden Sie jede Zelle mit einem daumenbreiten Kragen Wabe aus. Tragen Sie sie aufrecht und warm, eine in jedes Kästchen. Schreiben Sie auf, welche Zelle wohin kam.',
        caution:
          'Schneiden Sie von der Hand weg. Ränder mit älteren Larven reifen früh: Sehen Sie im Zweifel einen Tag früher nach. Die erste geschlüpfte Königin tötet die anderen in ihren Zellen.',
      },
      'flat-comb': {
        what: 'Schneiden Sie die Zellen mit einem Kragen Wabe auseinander. Tragen Sie sie aufrecht und warm, eine in jedes Kästchen. Schreiben Sie auf, welche Zelle wohin kam.',
        caution:
          'Das Alter ist gemischt: Die älteste entscheidet. Käfigen Sie, was Sie nicht gleich einsetzen können. Schneiden Sie von der Hand weg.',
      },
      'emergency-cells': {
        what: 'Wenn Sie die Zellen verteilen wollen: Schneiden Sie schlupfreife mit einem Kragen Wabe aus und setzen Sie eine in jedes Kästchen. Lassen Sie eine oder zwei im Volk.',
        why: 'Nachschaffungszellen sind verschieden alt. Die erste Königin kann neun Tage nach dem Verlust der alten heraus sein.',
      },
      'swarm-cells': {
        what: 'Schneiden Sie jede Zelle fünf bis sechs Tage nach dem Verdeckeln mit einem Kragen Wabe aus, und setzen Sie eine in jedes Kästchen. Käfigen Sie solche von unbekanntem Alter sofort einzeln.',
        why: 'Schwarmzellen sind bis zu eine Woche verschieden alt. Eine geschlüpfte Königin zerstört die übrigen oder zieht mit einem Schwarm aus.',
      },
      'supersedure-cells': {
        what: 'Lassen Sie sie besser. Das Volk weiselt still um, mit einer bis drei Zellen.',
        why: 'Ein Volk, das diese Zellen verliert, kann weisellos bleiben.',
        caution: 'Nehmen Sie eine nur, wenn eine gleich gute im Volk bleibt.',
      },
    },
  },
  'set-out': {
    what: 'Tragen Sie die Kästchen in der Dämmerung an ihre Plätze, die Fluglöcher in verschiedene Richtungen, jedes mit einem Stein, einem Busch oder einer Farbe als Merkzeichen. Öffnen Sie sie.',
    why: 'In der Dämmerung freigelassene Bienen haben eine Nacht, um zu lernen, dass sie hier wohnen. Am Tag flögen viele heim.',
    caution:
      'Wählen Sie Schatten, und bleiben Sie fern von Wegen, Nachbarn und Spielplätzen. Heben Sie mit gebeugten Knien und einer Lampe am Kopf, nicht in der Hand.',
  },
  emergence: {
    what: 'Nichts zu tun. Die junge Königin schneidet einen Ring in die Spitze ihrer Zelle und kommt heraus.',
    why: 'Wärme und Alter der Larve entscheiden über die Stunde, also ist es eine Spanne von Tagen: Der erste gilt für die älteste, warm gehaltene Larve, der letzte für die jüngste, kühl gehaltene.',
    caution: 'Sind am ersten dieser Tage noch Zellen beisammen, verteilen oder käfigen Sie sie jetzt.',
  },
  'emergence-check': {
    what: 'Öffnen Sie jedes Kästchen kurz und sehen Sie die Zelle an: Ein runder Deckel an der Spitze heißt, sie ist heraus; ein Loch in der Seite, die Zelle wurde ausgebissen; ganz und dunkel, sie ist tot oder verspätet.',
    why: 'Jetzt leer gefundene Kästchen können eine Zelle oder eine unbegattete Königin aus der Reserve bekommen, solange die Bienen noch eine annehmen.',
    caution: 'Vor 11 oder nach 16 Uhr. Jagen Sie nicht nach der Königin; sie ist flink und kann auffliegen.',
  },
  'hands-off-mating': {
    what: 'Öffnen, versetzen oder drehen Sie die Kästchen nicht. Gehen Sie zwischen 11 und 16 Uhr nicht einmal durch die Reihe.',
    why: 'Die Königinnen machen ihre ersten Ausflüge und fliegen zur Begattung. Eine, die ihr Kästchen verändert findet, ist verloren, oder Bienen, die zur falschen Stunde gestört wurden, töten sie.',
    caution:
      'Futter lässt sich am Abend von außen nachfüllen. Achten Sie auf Wespen und Räuber, und engen Sie die Fluglöcher ein, wenn sie kommen.',
  },
  'first-look': {
    what: 'Sehen Sie vor 11 oder nach 16 Uhr in jedem Kästchen eine Wabe an: Eier, eines je Zelle, am Boden stehend. Tragen Sie ein, was Sie sahen; die Königin brauchen Sie nicht zu sehen.',
    why: 'Etwa zwölf Tage nach dem Schlupf legt eine Königin bei gutem Wetter, in einem kühlen Frühjahr bis zu drei Wochen danach. Frühere Kontrollen stören nur.',
    caution:
      'Eine Königin, die noch nicht legt, ist scheu: Schließen Sie sofort, wenn die Bienen sie einzuknäueln beginnen. Kästchen ohne Eier sieht man nach einigen Tagen wieder an, man gibt sie nicht auf.',
  },
  'sealed-brood-look': {
    what: 'Suchen Sie flach verdeckelte Arbeiterinnenbrut in einer geschlossenen Fläche. Zeichnen Sie die Königin in der Farbe des Jahres, und vermerken Sie sie.',
    why: 'Nur verdeckelte Arbeiterinnenbrut beweist, dass sie gut begattet ist. Buckelige Deckel auf Arbeiterinnenzellen heißen Drohnenbrut: Sie ist es nicht.',
    caution:
      'Vor 11 oder nach 16 Uhr. Halten Sie sie beim Zeichnen über das offene Kästchen, lassen Sie die Farbe trocknen, und geben Sie sie sanft zurück. Man soll sie nicht fangen, bevor sie einige Tage gelegt hat; drei bis vier Wochen nach dem Schlupf ist besser.',
  },
  'late-warning': {
    what: 'Kästchen, die jetzt noch keine Eier haben, sind spät. Sehen Sie nach jeder Reihe guter Flugtage wieder nach.',
    why: 'Die Begattung sollte drei Wochen nach dem Schlupf vorbei sein; später gibt es weniger Eier und ein kürzeres Leben. Tage, an denen keine Königin fliegen konnte, schieben diesen Tag hinaus, auf höchstens 30 Tage.',
    caution:
      'Bienen, die drei bis vier Wochen ohne Brut sind, können selbst zu legen beginnen. Denken Sie an eine neue Zelle oder ans Vereinigen.',
  },
  'give-up': {
    what: 'Suchen Sie ein letztes Mal die Königin oder Eier. Geben Sie dem Kästchen dann eine neue Zelle, oder vereinigen Sie es mit einem anderen. Vermerken Sie den Grund, wenn Sie ihn kennen.',
    why: 'Vier Wochen nach dem Schlupf ist eine Königin, die nicht legt, verloren oder wird sich nicht mehr begatten. Nur nach langem schlechtem Wetter lohnt eine fünfte Woche.',
    caution:
      'Suchen und entfernen Sie eine gescheiterte Königin, bevor Sie vereinigen. Haben Sie Anzeichen von Krankheit gesehen, vereinigen Sie nichts und fragen Sie um Rat.',
  },
};
