import type { CELLS as english } from '../../english/steps/cells.ts';
import type { Translation } from '../../translation.ts';

export const CELLS: Translation<typeof english> = {
  'count-taken': {
    what: 'Heben Sie die Leiste einmal. Zählen Sie, wie viele Larven auf einem Bett von Futtersaft mit einem Rand aus neuem Wachs liegen. Schreiben Sie für jede Leiste gegeben und angenommen auf.',
    why: 'Ein Tag zeigt, was die Bienen aufziehen werden. Weniger als die Hälfte: Geben Sie heute neue Larven in die leeren Näpfchen, als neue Serie mit eigener Nummer.',
    caution:
      'Ein kurzer Blick, kein Schütteln: Eine Feder oder ein Rauchstoß nimmt die Bienen weg. Auf einer Leiste mischt man nie das Alter, ohne es zu kennzeichnen.',
    byMethod: {
      'cut-comb-edge': {
        what: 'Heben Sie die Wabe einmal. Zählen Sie die am Rand begonnenen Zellen, und schreiben Sie gegeben und angenommen auf.',
      },
      'flat-comb': {
        what: 'Sehen Sie von der Seite unter die Wabe. Zählen Sie die begonnenen Zellen und vermerken Sie sie; mehr als 20 werden ausgedünnt.',
      },
    },
  },
  'move-to-finisher': {
    what: 'Hängen Sie die Leiste zwischen offene Brut in ein starkes Volk, 15 bis 20 Zellen in jedes. Geben Sie die Bienen des Anbrüters zurück, indem Sie sie davor abschütteln.',
    why: 'Eingesperrte Bienen können viele Zellen beginnen, sie aber nur ein bis zwei Tage gut füttern.',
    caution:
      'Zerstören Sie zuerst die eigenen Zellen des Finishers. Hängen Sie nicht mehr als 20 in einen Finisher: Gedrängte Zellen geben kleine Königinnen.',
  },
  'open-divider': {
    what: 'Öffnen Sie den Schieber des Trennbretts und schließen Sie das untere hintere Flugloch. Rühren Sie sonst nichts an.',
    why: 'Von jetzt an füttert das ganze Volk die Zellen, im Duft der Königin unten. Die Quellen sagen ein oder zwei Tage nach der Larvengabe.',
    caution: 'Das Absperrgitter muss bleiben: Die Königin würde die Zellen zerstören.',
    byBuilder: {
      'queen-parked-above': {
        title: 'Die Königin nach unten zurückbringen',
        what: 'Setzen Sie die Zargen mit der Königin wieder nach unten, ein Absperrgitter darüber und die Zellen obenauf.',
        why: 'Die Zellen sind begonnen. Jetzt füttert sie ein ganzes Volk mit der Königin unten.',
        caution:
          'Heben Sie zu zweit, und halten Sie die Zarge mit den Zellen aufrecht und ruhig. Prüfen Sie das Absperrgitter auf Lücken.',
      },
    },
  },
  'check-own-cells': {
    what: 'Schütteln oder kehren Sie die Bienen von jeder anderen Wabe, und zerstören Sie alle Zellen darauf. Lassen Sie die Leiste in Ruhe.',
    why: 'Blieb offene Brut darin, beginnen die Bienen eigene Zellen. Eine davon könnte etwa neun Tage nach dem Verlust der Königin schlüpfen, vor Ihren.',
    caution:
      'Schütteln Sie nie die Wabe oder Leiste mit Ihren Zellen. Eine in einer Ecke übersehene Zelle genügt, um die ganze Serie zu verlieren.',
    byBuilder: {
      'queenright-over-excluder': {
        why: 'Auf Waben, die über das Absperrgitter gehängt wurden, beginnen die Bienen eigene Zellen. Sehen Sie fünf bis sieben Tage nach dem Hochhängen jeder Wabe nach.',
      },
    },
  },
  'thin-cells': {
    what: 'Zerstören Sie die schon verdeckelten Zellen, und lassen Sie in jeder Einheit eine oder zwei große offene mit viel Futtersaft.',
    why: 'So früh verdeckelte Zellen wurden über alten Larven begonnen und geben schlechte Königinnen. Und mehrere Königinnen in einem Volk können je mit einem Schwarm ausziehen.',
    caution: 'Kennzeichnen Sie mit einer Nadel im Oberträger, was bleibt. Schütteln Sie diese Wabe nicht.',
    byMethod: {
      'swarm-cells': {
        what: 'Lassen Sie eine gute Zelle in dem Volk, das geschwärmt hat; nehmen Sie die anderen für Ihre Kästchen, oder zerstören Sie sie.',
        why: 'Sich selbst überlassen, kann von etwa sieben Tagen nach dem Verdeckeln an ein Nachschwarm mit der ersten jungen Königin ausziehen.',
        caution:
          'Königinnen aus Schwarmzellen begünstigen schwarmfreudige Völker. Zellen werden erst schlupfreif versetzt; bis dahin kennzeichnen Sie sie und lassen sie hängen.',
      },
    },
  },
  sealed: {
    what: 'Nichts zu tun. Die Bienen schließen die Zellen etwa acht Tage nach der Eiablage mit Wachs.',
    why: 'Die Larve hat sich satt gefressen und spinnt ihren Kokon. Sehen Sie den Tag des Verdeckelns, vermerken Sie ihn: Er macht alle späteren Tage sicherer.',
    caution:
      'In einer gekippten oder gestoßenen Zelle kann die Larve jetzt von ihrem Futter fallen. Sehen Sie nach, ohne die Zellen zu heben.',
  },
  'count-sealed': {
    what: 'Zählen Sie die geschlossenen Zellen auf jeder Leiste. Schneiden Sie verbundene auseinander, oder zerstören Sie eine von jedem Paar. Könnte eine Larve zu alt gewesen sein, setzen Sie jetzt die Käfige auf.',
    why: 'Das ist der letzte Blick vor den Ruhetagen. Was jetzt verdeckelt ist, können Sie später verteilen.',
    caution:
      'Halten Sie die Leiste aufrecht, aus Wind und Kälte, und seien Sie schnell. Von morgen an dürfen die Zellen nicht bewegt werden.',
  },
  'hands-off-cells': {
    what: 'Öffnen Sie das Pflegevolk nicht. Kein Schütteln, kein Drehen, keine Reise mit den Zellen.',
    why: 'In diesen Tagen wird aus der Larve eine Puppe. Flügel und Beine bilden sich frei in der Hülle, und ein Stoß oder eine Verkühlung macht die Königin zum Krüppel.',
    caution:
      'Halten Sie auch andere fern: Mähen, das Versetzen des Stocks oder das Heben seiner Zargen schadet ebenso.',
  },
};
