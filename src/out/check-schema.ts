import * as z from "zod";
import { findingSchema, inputSchema } from "./plan-schema.ts";

const cell = z.union([z.string(), z.number(), z.boolean(), z.null()]);

const columnSchema = z.object({
  column: z.number().int(),
  header: z.string().nullable(),
  group: z.string().nullable(),
  kind: z.string().nullable(),
  field: z.string().nullable(),
  by: z.enum(["header", "contents", "mapping"]).nullable(),
  dateOrder: z.enum(["dmy", "mdy", "ymd"]).nullable(),
});

const setAsideSchema = z.object({
  file: z.string(),
  sheet: z.string().nullable(),
  line: z.number().int(),
  reason: z.string(),
  message: z.string(),
  cells: z.array(cell),
});

/** Rows under their canonical column names, ISO dates and canonical units, each with where it came from. */
const fleetRows = z.array(z.record(z.string(), z.unknown()));

/** Check format `wanecast.check/1`: how every sheet and column was read, and the fleet that came of it. */
export const checkSchema = z.object({
  format: z.literal("wanecast.check/1"),
  asOf: z.string().regex(/^\d{4}-\d{2}-\d{2}$/),
  inputs: z.array(inputSchema.extend({ columns: z.array(columnSchema) })),
  setAside: z.array(setAsideSchema),
  findings: z.array(findingSchema),
  refused: z.array(z.object({ file: z.string(), code: z.string(), message: z.string() })),
  fleet: z.object({
    devices: fleetRows,
    packs: fleetRows,
    runtime_tests: fleetRows,
    dated_stock: fleetRows,
    catalogue: fleetRows,
    use_log: fleetRows,
    on_order: fleetRows,
    routine: fleetRows,
    suppliers: fleetRows,
    policy: z.array(z.object({ key: z.string(), value: z.string() }).loose()),
  }),
});

/** What `check --json` prints. */
export type Check = z.infer<typeof checkSchema>;
