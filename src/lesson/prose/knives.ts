/** What else a craft knife is called: a tool on the list, and a blade to be careful with. */
export const craftKnives = [
  'hobby knife',
  'utility knife',
  'trimming knife',
  'art knife',
  'precision knife',
  'snap-off knife',
] as const
