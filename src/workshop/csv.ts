/** Read by a spreadsheet as UTF-8 and not as the letters of some country. */
const mark = '\ufeff'

/**
 * Tables as comma-separated values (RFC 4180), an empty line between them.
 *
 * @param separator where a language has the comma in its numbers, its spreadsheets want a semicolon.
 */
export const csvOf = (
  tables: readonly (readonly (readonly string[])[])[],
  separator: ',' | ';' = ',',
): string =>
  mark +
  tables
    .map((table) =>
      table.map((row) => `${row.map((text) => field(text, separator)).join(separator)}\r\n`).join(''),
    )
    .join('\r\n')

/**
 * A field as RFC 4180 writes it. What a spreadsheet would take for a formula stays text: the characters that begin one
 * are those of OWASP's page on CSV injection.
 */
function field(text: string, separator: string): string {
  const safe = /^[=+\-@\t\r\n＝＋－＠]/.test(text) ? `'${text}` : text
  return safe.includes(separator) || /["\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
