import { keepPlan } from "./kept-work.ts";
import { change, inForce, show } from "./plan-in-force.ts";
import { tell } from "./status.ts";
import { say } from "./strings.ts";

/** Keeps the plan in force, to compare later ones with it. */
export async function keepToCompare(): Promise<void> {
  const { plan } = inForce();
  change({ before: plan, kept: true });
  const stored = keepPlan(plan);
  await show();
  if (!(await stored)) tell(say.assumptions.notStored);
}

/** Compares with the plan before the last change again. */
export async function letGo(): Promise<void> {
  change({ before: null, kept: false });
  // before the page says so, so that a reload right after it does not find the plan again
  await keepPlan(null);
  await show();
}
