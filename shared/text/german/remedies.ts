import type { REMEDY_WORDS as english } from '../english/remedies.ts';
import type { Translation } from '../translation.ts';

export const REMEDY_WORDS: Translation<typeof english> = {
  'feed-or-wait-for-flow': 'Füttern Sie jeden Abend dünne Zuckerlösung, oder warten Sie, bis Nektar hereinkommt.',
  'move-hive-to-shed-foragers':
    'Versetzen Sie den Stock an einem Flugtag einige Schritte: Die Flugbienen gehen anderswohin, und der Nektar in der Wabe wird gefressen.',
  'give-another-comb': 'Hängen Sie eine andere leere Wabe mitten ins Brutnest.',
  'start-over': 'Beginnen Sie mit einer frischen Wabe von vorn, als neue Serie; diese bleibt mit ihrem Grund im Buch.',
  'give-new-larvae-as-new-batch': 'Geben Sie neue Larven in die leeren Näpfchen, als neue Serie mit eigener Nummer.',
  'use-larvae-today': 'Geben Sie die Larven heute.',
  'wait-a-day': 'Warten Sie einen Tag und sehen Sie noch einmal nach.',
  'move-cells-earlier': 'Versetzen Sie die Zellen früher: Der Zeitplan zeigt den letzten sicheren Tag.',
  'cage-cells-now': 'Käfigen oder verteilen Sie die anderen Zellen jetzt, bevor die erste Königin sie findet.',
  'look-for-hidden-queen': 'Suchen Sie im Pflegevolk nach einer versteckten Königin, auch einer unbegatteten.',
  'destroy-own-cells':
    'Zerstören Sie die eigenen Zellen des Pflegevolks auf jeder Wabe, nachdem Sie die Bienen abgekehrt haben.',
  'add-bees-and-cover': 'Geben Sie junge Bienen dazu, und schützen Sie das Volk vor Kälte.',
};
