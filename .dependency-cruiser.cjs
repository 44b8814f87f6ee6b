/** Imports run downward only: app -> ui, calculators, engine, diagnosis, instrument, machine -> formula, signal, reference -> quantity. */
const rule = (name, from, to, comment) => ({
  name,
  severity: 'error',
  comment,
  from: { path: from },
  to: { path: to },
});

/** A room of the app and what it uses of others at once; what it may fetch when it is asked for is `later`. */
const room = (name, at_once, later = []) => [
  rule(
    `${name}-uses`,
    `^src/app/${name}/`,
    `^src/app/(?!(${[name, 'desk', ...at_once, ...later].join('|')})/)`,
    `${name} takes what it needs from ${['desk', ...at_once, ...later].join(', ')}`,
  ),
  ...(later.length === 0
    ? []
    : [
        {
          ...rule(
            `${name}-fetches`,
            `^src/app/${name}/`,
            '',
            `${name} fetches these when they are asked for, not before`,
          ),
          to: { path: `^src/app/(${later.join('|')})/`, dynamic: false },
        },
      ]),
];

module.exports = {
  forbidden: [
    rule('quantity-is-the-ground', '^src/quantity/', '^src/(?!quantity/)', 'quantity imports nothing of ours'),
    rule('formula-down', '^src/formula/', '^src/(?!formula/|quantity/)', 'formula imports quantity only'),
    rule('signal-down', '^src/signal/', '^src/(?!signal/|quantity/)', 'signal imports quantity only'),
    rule('diagnosis-stands-alone', '^src/diagnosis/', '^src/(?!diagnosis/)', 'diagnosis imports nothing of ours'),
    rule(
      'instrument-down',
      '^src/instrument/',
      '^src/(?!instrument/|formula/|signal/|reference/|quantity/)',
      'instruments know no screen and no check',
    ),
    rule('worker-stands-alone', '^src/worker/', '^src/(?!worker/)', 'the worker needs nothing of the app'),
    rule(
      'rescue-stands-alone',
      '^src/rescue/',
      '^src/(?!rescue/|machine/exchange-form\\.ts$)',
      'the rescue comes up where nothing else does: it is one script, and small',
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
    rule(
      'desk-knows-no-room',
      '^src/app/desk/',
      '^src/app/(?!desk/)',
      'rooms hand things over at the desk, which knows none',
    ),
    ...room('readings', []),
    ...room('files', []),
    ...room('phone', []),
    {
      name: 'instruments-apart',
      severity: 'error',
      comment:
        'an instrument knows the panel that all of them are, what those of the ear and of the camera share, and no other instrument',
      from: { path: '^src/app/phone/([^/]+)/' },
      to: { path: '^src/app/phone/', pathNot: '^src/app/phone/($1/|sound/|photo/|panel\\.ts$)' },
    },
    {
      name: 'phone-by-its-door',
      severity: 'error',
      comment: 'other rooms see the list of instruments, the dialog and the screen, and fetch none by itself',
      from: { path: '^src/', pathNot: '^src/app/phone/' },
      to: { path: '^src/app/phone/', pathNot: '^src/app/phone/(phones\\.ts|dialog\\.tsx|screen\\.tsx)$' },
    },
    // The file that goes along with a case.
    ...room('case', ['files']),
    // The instrument beside a line, and the case that a check is taken for.
    ...room('sheet', ['phone'], ['case']),
    // A machine's page shows what the other rooms keep of it.
    ...room('machine', ['readings', 'files'], ['case']),
    {
      name: 'shell-fetches',
      severity: 'error',
      comment:
        'every screen is fetched when it is asked for; the list of instruments and the files stand on a screen of the shell',
      from: { path: '^src/app/shell/' },
      to: { path: '^src/app/(?!shell/|desk/)', pathNot: '^src/app/(phone/phones\\.ts$|files/)', dynamic: false },
    },
    {
      name: 'shell-starts-light',
      severity: 'error',
      comment: 'what stands around every screen needs no other room',
      from: { path: '^src/app/shell/', pathNot: '^src/app/shell/(home\\.tsx$|settings/)' },
      to: { path: '^src/app/(?!shell/|desk/)', dynamic: false },
    },
    {
      name: 'calculators-apart',
      severity: 'error',
      comment: 'one calculator never imports another',
      from: { path: '^src/calculators/([^/]+)/' },
      to: { path: '^src/calculators/[^/]+/', pathNot: '^src/calculators/$1/' },
    },
    {
      name: 'words-at-home',
      severity: 'error',
      comment: "words are part of their room: nobody reads another room's",
      from: { path: '^(src/(?:app|calculators)/[^/]+|src/(?!app/|calculators/)[^/]+)/' },
      to: { path: '/words/[a-z]+(/|\\.ts$)', pathNot: '^$1/' },
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
