/** The head of a print's answer in which stands what its making has shown: a list of sentences as JSON, as in an address. */
export const notesHeader = 'X-Print-Notes'
