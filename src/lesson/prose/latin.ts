/**
 * Letters as they stand in brackets of a pattern that is for Latin script and has no regard to letter case. A pattern with
 * all letters of the world in it, and no regard to their case, is slow to make.
 */
export const latin = 'a-zÀ-ÖØ-öø-ɏ'
