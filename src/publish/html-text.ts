/** HTML of our own making: the one thing that a template gets as it is. All else is escaped. */
export interface Html {
  readonly html: string
}

export const html = (text: string): Html => ({ html: text })

const named: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** Text for HTML, also between quotes. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (c) => named[c] ?? c)
