/** What came of filling a row: the product number its label gives, or why the row cannot be used. */
export type Filled = { code: null; product: string | null } | { code: string; message: string };
