import Handlebars from 'handlebars'

/** A view as a template gets it: our own HTML becomes what Handlebars does not escape. */
export function marked(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(marked)
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value)
  const [[key, text] = []] = entries
  if (entries.length === 1 && key === 'html' && typeof text === 'string')
    return new Handlebars.SafeString(text)
  return Object.fromEntries(entries.map(([name, item]) => [name, marked(item)]))
}
