import {
  BarController,
  BarElement,
  CategoryScale,
  Chart,
  Filler,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
} from "chart.js";
import { rules } from "./rules.ts";
import { scatter } from "./scatter.ts";

// package.json lists this file under "sideEffects": else the build drops the registration as unused.
Chart.register(
  BarController,
  BarElement,
  CategoryScale,
  Filler,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  rules,
  scatter,
);

/** Chart.js with the parts that the page draws with. */
export { Chart };
