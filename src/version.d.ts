/** Version of package.json, put in by the build. */
declare const __TRAMMEL_VERSION__: string;
