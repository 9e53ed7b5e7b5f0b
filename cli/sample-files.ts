import catalogue from "../sample-data/catalogue.csv";
import datedStock from "../sample-data/dated_stock.csv";
import devices from "../sample-data/devices.csv";
import onOrder from "../sample-data/on_order.csv";
import packs from "../sample-data/packs.csv";
import policy from "../sample-data/policy.csv";
import routine from "../sample-data/routine.csv";
import runtimeTests from "../sample-data/runtime_tests.csv";
import suppliers from "../sample-data/suppliers.csv";
import useLog from "../sample-data/use_log.csv";

/** The invented fleet's sheets, as they stand in sample-data. */
export const SAMPLE_FILES: readonly { name: string; text: string }[] = [
  { name: "catalogue.csv", text: catalogue },
  { name: "dated_stock.csv", text: datedStock },
  { name: "devices.csv", text: devices },
  { name: "on_order.csv", text: onOrder },
  { name: "packs.csv", text: packs },
  { name: "policy.csv", text: policy },
  { name: "routine.csv", text: routine },
  { name: "runtime_tests.csv", text: runtimeTests },
  { name: "suppliers.csv", text: suppliers },
  { name: "use_log.csv", text: useLog },
];
