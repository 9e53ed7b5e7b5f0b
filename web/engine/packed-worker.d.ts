declare module "*?worker&inline&packed" {
  /** A worker's text, deflated and in base64: see ../pack-worker.ts. */
  const packed: string;
  export default packed;
}
