// Who may import whom. Each message says why, and where the code should go instead. See DEVELOPERS.md, "The tree".
const ZOD = 'node_modules/zod/';
const NUMBERS = 'node_modules/@stdlib/';
const shared = (...names) => names.map((name) => `^shared/${name}/`);
const no = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });
const only = (layer, allowed, comment) =>
  no(`${layer.replaceAll('/', '-')}-boundary`, comment, { path: `^${layer}/` }, { pathNot: [`^${layer}/`, ...allowed] });

module.exports = {
  forbidden: [
    no('no-loops', 'A loop hides which file is the lower one: move the common part down.', {}, { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } }),
    only('shared/kernel', [], 'The kernel is the lowest layer and knows nothing of the trade: put trade words in shared/model.'),
    only('shared/model', [ZOD, ...shared('kernel')], 'Records know nothing of rules or operations: a rule goes to main/engine.'),
    only('shared/biology', shared('kernel', 'model'), 'Tables of facts hold facts only: words go to shared/text, rules to main/engine.'),
    only('shared/contract', [ZOD, ...shared('kernel', 'model')], 'The contract says what travels, not how it is reckoned.'),
    only('shared/text', [...shared('kernel', 'model', 'biology', 'contract'), 'node_modules/date-fns/'], 'Words do not compute.'),
    only('main/engine', [...shared('kernel', 'model', 'biology'), NUMBERS], 'The engine is pure: hand values in; reading and writing belong to main/operations.'),
    only('main/ports', shared('kernel', 'model'), 'A port is a type, it reaches for nothing.'),
    no('operations-touch-no-world', 'Files, clock and ids are handed in (main/ports); reading and writing files is main/workbook, main/paper or main/exchange.', { path: '^main/operations/' }, { dependencyTypes: ['core'] }),
    no('operations-stay-apart', 'Move the common step to main/engine or main/workbook.', { path: '^main/operations/([^/]+)/' }, { path: '^main/operations/[^/]+/', pathNot: '^main/operations/$1/' }),
    no('operations-below-the-door', 'An operation does not know the door, the shells or the page.', { path: '^main/operations/' }, { path: '^(main/(api|demo)|app|renderer)/' }),
    no('workbook-below-operations', 'The workbook, paper and exchange do not know who uses them.', { path: '^main/(workbook|paper|exchange)/' }, { path: '^(main/(operations|api|demo)|app|renderer)/' }),
    no('main-knows-no-shell', 'A shell drives main; main never reaches for a shell or a page.', { path: '^main/' }, { path: '^(app|renderer)/|node_modules/(electron|react|@mui)/' }),
    no('shells-stay-apart', 'What both shells need goes to app/adapters or main.', { path: '^app/(electron|loopback)/' }, { path: '^app/(electron|loopback)/', pathNot: '^app/$1/' }),
    no('shells-draw-nothing', 'A shell serves the built page, it imports no page source.', { path: '^app/' }, { path: '^renderer/' }),
    no('electron-in-one-folder', 'Only app/electron may name Electron.', { pathNot: '^(app/electron|test)/' }, { path: 'node_modules/electron/' }),
    no('page-sees-shared-only', 'Ask by operation name through renderer/client.', { path: '^renderer/', pathNot: '^renderer/client/' }, { path: '^(app|main)/' }),
    no('client-sees-the-door-as-type', 'Import the router with "import type" only.', { path: '^renderer/client/' }, { path: '^(app|main)/', dependencyTypesNot: ['type-only'] }),
    no('no-node-in-page', 'The page also runs in a plain browser.', { path: '^renderer/' }, { dependencyTypes: ['core'] }),
    no('words-by-the-catalogue', 'Words of a page come from useWords or useSentences (renderer/components/words.ts), words of papers and files from workbookWords (main/operations).', { path: '^(renderer|main|app)/' }, { path: '^shared/text/(english|german)/', pathNot: '^shared/text/english/(english|first-words|finding-text)[.]ts$' }),
    no('languages-come-when-asked', 'The window loads a language by shared/text/load-words.ts; the catalogue of all of them is for main and the shells.', { path: '^renderer/' }, { path: '^shared/text/catalogue[.]ts$' }),
    no('features-stay-apart', 'Features meet in renderer/shell; common parts go to renderer/components.', { path: '^renderer/features/([^/]+)/' }, { path: '^renderer/features/', pathNot: '^renderer/features/$1/' }),
    no('parts-know-no-feature', 'Components and charts get everything as props.', { path: '^renderer/(components|charts|client)/' }, { path: '^renderer/(features|shell)/' }),
    no('nothing-imports-test', 'Test code stays in test.', { pathNot: '^test/' }, { path: '^test/' }),
    no('resolvable', 'An import that leads nowhere.', {}, { couldNotResolve: true, pathNot: 'out/main/' }),
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^out/' },
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'node', 'default'] },
  },
};
