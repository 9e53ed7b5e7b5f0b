/** A sheet bundled into the program as its text. */
declare module "*.csv" {
  const text: string;
  export default text;
}
