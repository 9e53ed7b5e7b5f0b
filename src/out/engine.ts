/** Name and version of what made a plan; the version is package.json's (a test holds them together). */
export const ENGINE = "wanecast 0.1.0";
