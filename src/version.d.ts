/** Version of package.json, put in by the build. */
declare const __TRAMMEL_VERSION__: string;

/** A page of nothing but the rescue, made by build/rescue.ts. */
declare module 'virtual:rescue-page' {
  const page: string;
  export default page;
}
