/**
 * What stands beside every forecast, whatever the fleet: summary, files and page show these sentences first.
 */
export const STANDING_CAUTIONS: readonly string[] = [
  "This is a planning aid only. It does not test, clear or condemn any device.",
  "Whether a device may be used is decided by its own self-test, its instructions for use, local protocol and licensed biomedical staff.",
  "A pack that fails a test, is swollen, is damaged or is recalled comes out now, whatever the forecast says.",
  "Past expiry is past expiry: no forecast makes an expired unit usable.",
  "The forecasts rest on the readings given; what the sheets leave out, the plan cannot see.",
];
