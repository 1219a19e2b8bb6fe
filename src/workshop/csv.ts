/** Read by a spreadsheet as UTF-8 and not as the letters of some country. */
const mark = '\ufeff'

/** Tables as comma-separated values (RFC 4180), an empty line between them. */
export const csvOf = (tables: readonly (readonly (readonly string[])[])[]): string =>
  mark + tables.map((table) => table.map((row) => `${row.map(field).join(',')}\r\n`).join('')).join('\r\n')

/**
 * A field as RFC 4180 writes it. What a spreadsheet would take for a formula stays text: the characters that begin one
 * are those of OWASP's page on CSV injection.
 */
function field(text: string): string {
  const safe = /^[=+\-@\t\r\n＝＋－＠]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
