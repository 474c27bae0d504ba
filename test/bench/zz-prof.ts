import { labelPdf } from '../../main/paper/label-pdf.ts';
import { layOutLabel } from '../../main/paper/label-layout.ts';
import { openPaper } from '../../main/paper/paper-document.ts';
import { qrCode } from '../../main/paper/qr-code.ts';
import { labelSheet } from '../../shared/model/label-sheet.ts';
const S = labelSheet('a4-3x7-63.5x38.1');
const mothers = ['Anna', 'Žofie', 'Łucja', 'Ørsted', 'Müller', 'Maria Magdalena'];
const labels = Array.from({ length: 1000 }, (_, i) => ({ placementId: `p-${i}`, box: `K${String(i + 1).padStart(3, '0')}`, batch: `26-${String(1 + (i % 60)).padStart(2, '0')}`, mother: `mother H${String(1 + (i % 17)).padStart(2, '0')} ${mothers[i % 6]}`, yearColour: 'white', handsOffUntil: `Mon ${1 + (i % 28)} May`, firstLookOn: `Tue ${1 + (i % 28)} May`, sealedBroodLookOn: `Thu ${1 + (i % 28)} Jun` }));
const t = (n: string, f: () => unknown) => { for (let k = 0; k < 3; k++) { const a = performance.now(); f(); console.log(n, (performance.now() - a).toFixed(0)); } };
const doc = openPaper({ title: 't', madeAt: '2026-05-14T12:00:00Z' });
t('qr', () => labels.map(qrCode));
t('layout', () => labels.map((l) => layOutLabel(l, S, { pencilLine: false, qrModules: 25 }, doc.measure)));
for (let k = 0; k < 3; k++) { const a = performance.now(); await labelPdf({ title: 't', sheet: S, labels, startAt: 1, pencilLine: false, qr: true, outline: false, madeAt: '2026-05-14T12:00:00Z' }); console.log('all', (performance.now() - a).toFixed(0)); }
for (const qr of [false]) for (let k = 0; k < 3; k++) { const a = performance.now(); const r = await labelPdf({ title: 't', sheet: S, labels, startAt: 1, pencilLine: false, qr, outline: false, madeAt: '2026-05-14T12:00:00Z' }); console.log('noqr', (performance.now() - a).toFixed(0), r.kind === 'made' && r.bytes.length); }
console.log(labels.slice(0,1).map((l) => layOutLabel(l, S, { pencilLine: false, qrModules: 25 }, doc.measure)?.texts.map(t=>t.text+' '+t.points).join('|')));
