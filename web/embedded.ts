/** The JSON of the plan that came inside the page; null where the page is empty. */
export const EMBEDDED = document.getElementById("wanecast-data")?.textContent ?? null;
