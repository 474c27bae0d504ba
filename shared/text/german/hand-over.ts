import type { handOver as english } from '../english/hand-over.ts';
import type { Translation } from '../translation.ts';

export const handOver: Translation<typeof english> = {
  title: (number: string) => `Königin ${number}`,
  section: 'Begleitkarte',
  save: 'Begleitkarte speichern',
  fact: 'Über sie',
  word: '',
  promised: 'Versprochen an',
  promisedTo: (name: string, day: string | null) => (day === null ? name : `${name}, bis ${day}`),
  raised: 'Gezogen nach dem Arbeitsbuch',
  none: 'nicht bekannt',
  yearColour: (colour: string, year: number) => `${colour}, für ${year}`,
  marked: (on: string | null) => (on === null ? 'nicht aufgeschrieben, ob sie gezeichnet ist' : `gezeichnet am ${on}`),
  mark: 'Zeichen',
  introduce: 'Wie man sie zusetzt',
  steps: [
    'Halten Sie sie in ihrem Käfig im Schatten, nicht heiß und nicht kalt, mit einem Tropfen Wasser auf dem Gitter. Geben Sie sie, wenn es geht, noch am selben Tag ihrem neuen Volk.',
    'Das neue Volk darf keine Königin und keine Weiselzellen haben: Bienen mit eigener Königin, oder die eine ziehen, töten eine fremde. Sehen Sie noch einmal nach Zellen, bevor Sie sie herauslassen.',
    'Hängen Sie den Käfig zwischen zwei Waben mit junger Brut, das Gitter frei, damit die Bienen sie füttern, das Ende mit dem Futterteig etwas nach oben.',
    'Füttern Sie ein wenig, wo nichts blüht, und lassen Sie das Volk dann geschlossen. Sehen Sie nach einer Woche nach, nach Eiern und nicht nach ihr, mit wenig Rauch.',
    'Wo Bienen wie ein Knäuel auf dem Käfig sitzen und beißen, lassen Sie sie nicht heraus: Nehmen Sie ihre Zellen weg und warten Sie ein bis zwei Tage.',
    'Keine Art, eine Königin zuzusetzen, gelingt jedes Mal.',
  ],
  cautions: 'Vorsicht',
  caution: 'Diese Karte ist, was ihr Schreiber aufgezeichnet hat. Sie ist kein Gesundheitszeugnis.',
  file: (number: string) => `ripecell-koenigin-${number}.pdf`,
};
