/** All that a check loads at once when it is opened, by the name of its folder; not its entry of the list, which comes before. */
const OF_A_CHECK = /[\\/]src[\\/]calculators[\\/]([^\\/]+)[\\/](?!meta\.ts|words[\\/][^\\/]+[\\/]list\.ts)/;

/** What every check needs to be worked out and told. */
const ENGINE = [
  /[\\/]src[\\/]engine[\\/](calculator|context|entry|evaluate|join|name|order|settable|shared-places|signs|source|spec|standing|system|tell|tooled|verdict|work)\.ts/,
  /[\\/]src[\\/]engine[\\/]words[\\/]\w+\.ts/,
  /[\\/]src[\\/]formula[\\/](?!solve|stepped|fraction)/,
  /[\\/]src[\\/]quantity[\\/]/,
  /[\\/]node_modules[\\/]jsep[\\/]/,
  /[\\/]src[\\/]reference[\\/](citation|features|tools|words[\\/])/,
];

/**
 * Which modules make one file of the build. A check is one file and not four: they are asked for together, and what is alike in
 * them is packed once. So is what all checks share.
 */
export const chunks = {
  includeDependenciesRecursively: false,
  groups: [
    { name: (module: string) => OF_A_CHECK.exec(module)?.[1] ?? null },
    { name: 'engine', test: (module: string) => ENGINE.some((part) => part.test(module)) },
  ],
};
