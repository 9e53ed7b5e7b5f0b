import { takeInHand, takeInside } from "./at-hand.ts";
import { EMBEDDED } from "./embedded.ts";
import { ask } from "./engine/engine.ts";
import { type KeptWork, keptPlan, keptWork } from "./kept-work.ts";
import { choicesFromLink, takeLink } from "./own-choices.ts";
import { change, inForce, planFrom, show } from "./plan-in-force.ts";
import { mention, tell } from "./status.ts";
import { say } from "./strings.ts";

/** Opens the page with the work kept from last time, else with the plan inside it, else empty. */
export async function openPage(): Promise<void> {
  // Without its engine the page still shows a plan that came inside it.
  const words = await ask("describe", {}).catch((error: Error) => tell(say.intake.failed(error.message)));
  if (words) change({ words });
  const last = await keptWork();
  if (EMBEDDED !== null) change(await takeInside(EMBEDDED));
  const compared = last === null && EMBEDDED === null ? null : await keptPlan();
  if (compared !== null) change({ before: compared, kept: true });
  await show();
  if (last === null || (last.files.length === 0 && last.choices.length === 0)) await takeLink();
  else await goOnWith(last);
}

async function goOnWith({ files, columns, choices }: KeptWork): Promise<void> {
  if (files.length > 0) takeInHand({ files, columns: columns ?? null, underlying: [] });
  change({ choices: new Map(choices) });
  const linked = choicesFromLink();
  const { working, replanning } = say.intake;
  const text = files.length > 0 ? working(files.length) : replanning;
  const planned = await planFrom(text, inForce().plan, linked === 0);
  if (planned) mention(linked > 0 ? say.intake.taken(linked, "link") : say.intake.restored);
}
