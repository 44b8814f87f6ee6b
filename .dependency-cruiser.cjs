/** Imports run downward only: app -> ui, calculators, engine, diagnosis, instrument, machine -> formula, signal, reference -> quantity. */
const rule = (name, from, to, comment) => ({
  name,
  severity: 'error',
  comment,
  from: { path: from },
  to: { path: to },
});

module.exports = {
  forbidden: [
    rule('quantity-is-the-ground', '^src/quantity/', '^src/(?!quantity/)', 'quantity imports nothing of ours'),
    rule('formula-down', '^src/formula/', '^src/(?!formula/|quantity/)', 'formula imports quantity only'),
    rule('signal-down', '^src/signal/', '^src/(?!signal/|quantity/)', 'signal imports quantity only'),
    rule(
      'diagnosis-down',
      '^src/diagnosis/',
      '^src/(?!diagnosis/|formula/|signal/|reference/|quantity/)',
      'diagnosis knows checks by their ids only',
    ),
    rule(
      'instrument-down',
      '^src/instrument/',
      '^src/(?!instrument/|formula/|signal/|reference/|quantity/)',
      'instruments know no screen and no check',
    ),
    rule('reference-down', '^src/reference/', '^src/(?!reference/|quantity/)', 'reference imports quantity only'),
    rule(
      'machine-down',
      '^src/machine/',
      '^src/(?!machine/|formula/|reference/|quantity/)',
      'machine stands on its own',
    ),
    rule(
      'engine-down',
      '^src/engine/',
      '^src/(app|calculators|diagnosis|instrument|machine|ui)/',
      'the engine finds the calculators by their folders, and knows no store and no shell',
    ),
    rule(
      'calculators-down',
      '^src/calculators/',
      '^src/(app|diagnosis|instrument|machine)/',
      'calculators know no store and no shell',
    ),
    rule(
      'ui-knows-no-subject',
      '^src/ui/',
      '^src/(app|calculators|engine|diagnosis|instrument|machine)/',
      'ui is subject-free',
    ),
    {
      name: 'calculators-apart',
      severity: 'error',
      comment: 'one calculator never imports another',
      from: { path: '^src/calculators/([^/]+)/' },
      to: { path: '^src/calculators/[^/]+/', pathNot: '^src/calculators/$1/' },
    },
    {
      name: 'pure-layers',
      severity: 'error',
      comment: 'these run in plain Node: no Solid, no browser storage',
      from: {
        path: '^src/(formula|quantity|signal|reference|diagnosis)/|^src/machine/schema|^src/calculators/.*model\\.ts$',
      },
      to: { path: 'solid-js|idb-keyval|@solidjs' },
    },
    { name: 'no-circular', severity: 'error', from: {}, to: { circular: true, dependencyTypesNot: ['type-only'] } },
    { name: 'no-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true, pathNot: '^virtual:' } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'browser', 'default'] },
  },
};
