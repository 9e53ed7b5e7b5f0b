/** Words, as a pattern without its slashes, that people write before a date for it to be an expiry: "exp 03/2027". */
export const EXPIRES =
  "exp(?:ir(?:y|es|ing|ed|e|ation))?(?: date)?|abgelaufen(?: am| seit)?|perimee?s?(?: le)?|caducad[ao]s?|vencid[ao]s?|verlopen(?: op)?|use by|best before|best by|bb|mhd|verf\\p{L}*|ablauf|haltbar|verw\\p{L}*[. ]+bis|bis|per(?:emption)?|cad(?:uca\\p{L}*)?|vto|vence|scad\\p{L}*|val(?:id(?:o|ade))?|utg\\p{L}*|udlob|utlop|wazne do|do|tht|houdbaar tot|houdbaar|tot|until|till|due";
