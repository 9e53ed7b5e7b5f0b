declare module "*?worker&inline&text" {
  /** A worker's text: see ../pack-page.ts. */
  const text: string;
  export default text;
}
