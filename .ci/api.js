// Writes pages about the library into out/api, of the docstrings in its types: one for each entry of the package.
import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'

const { name, exports } = JSON.parse(await readFile('package.json', 'utf8'))
const folder = 'out/api'

/** What a file of types declares, by name, and what it passes on from others. */
async function readTypes(path) {
  const text = await readFile(path, 'utf8')
  const own = new Map()
  const declared =
    /(?:^(\/\*\*[\s\S]*?\*\/)\n)?^(export (?:default |declare )*(?:abstract )?(function|const|type|interface|class|namespace) (\w+)[\s\S]*?)(?=^\/\*\*|^export |^import |^declare |$(?![\s\S]))/gm
  for (const [, doc = '', code, kind, word] of text.matchAll(declared)) {
    const before = own.get(word)
    own.set(
      word,
      before ? { ...before, code: `${before.code}\n${code.trim()}` } : { doc, code: code.trim(), kind, path },
    )
  }
  const passed = new Map()
  for (const [, words, from] of text.matchAll(/^export (?:type )?\{([^}]*)\} from '(\.[^']+)\.js'/gm))
    for (const word of words
      .split(',')
      .map((one) => one.replace(/^\s*type /, '').trim())
      .filter(Boolean))
      passed.set(word, join(dirname(path), `${from}.d.ts`))
  return { own, passed, about: /^\/\*\*[\s\S]*?\*\/(?=\n\n?(?:import|export))/.exec(text)?.[0] ?? '' }
}

/** Follows a name to where it is declared. */
async function declaration(path, word) {
  const { own, passed } = await readTypes(path)
  const next = passed.get(word)
  return own.get(word) ?? (next ? declaration(next, word) : undefined)
}

/** A docstring without its stars, as paragraphs and tags. */
const docOf = (doc) => {
  const text = doc
    .replace(/^\/\*\*|\*\/$/g, '')
    .replace(/^[ \t]*\*? ?/gm, '')
    .trim()
  const [words = '', ...tags] = text.split(/^(?=@)/m)
  return {
    paragraphs: words
      .split(/\n\s*\n/)
      .map((one) => one.trim())
      .filter(Boolean),
    tags: tags.map((tag) => /^@(\w+)\s+([\s\S]*)/.exec(tag.trim())?.slice(1) ?? [tag.trim(), '']),
  }
}

const inWords = (text) => text.split(/`([^`]*)`/).map((part, i) => (i % 2 ? h('code', part) : part))
const tagNames = { param: 'Takes', returns: 'Gives', throws: 'Throws' }
const kinds = {
  function: 'Functions',
  const: 'Values',
  class: 'Errors and classes',
  interface: 'Types',
  type: 'Types',
}

const entryView = (word, { doc, code }, known) => {
  const { paragraphs, tags } = docOf(doc)
  return h('section', { id: word }, [
    h('h3', word),
    ...paragraphs.map((one) => h('p', inWords(one))),
    tags.length > 0
      ? h(
          'dl',
          tags.flatMap(([tag, text]) => [
            h('dt', tagNames[tag] ?? tag),
            h('dd', inWords(tag === 'param' ? text.replace(/^\w+/, '`$&`') : text)),
          ]),
        )
      : [],
    h(
      'pre',
      h(
        'code',
        code
          .split(/\b(\w+)\b/)
          .map((part) => (known.has(part) && part !== word ? h('a', { href: `#${part}` }, part) : part)),
      ),
    ),
  ])
}

const style = `body{font:1rem/1.5 system-ui,sans-serif;max-width:56rem;margin:2rem auto;padding:0 1rem;color:#1d2733}
h1,h2,h3{line-height:1.2}h2{margin-top:2.5rem;border-bottom:1px solid #8895a5}h3{font-family:ui-monospace,monospace}
pre{background:#f2f4f6;padding:.75rem 1rem;white-space:pre-wrap;font-size:.85rem}dl{display:grid;grid-template-columns:max-content 1fr;gap:.25rem 1rem}dt{font-weight:600}dd{margin:0}nav a{margin-right:1rem}`

const page = (title, content) =>
  `<!doctype html>\n${toHtml(
    h('html', { lang: 'en' }, [
      h('head', [
        h('meta', { charset: 'utf-8' }),
        h('meta', { name: 'viewport', content: 'width=device-width' }),
        h('title', title),
        h('style', style),
      ]),
      h('body', h('main', content)),
    ]),
  )}\n`

const entries = Object.entries(exports).flatMap(([entry, { types }]) =>
  types
    ? [{ title: join(name, entry), types, file: `${entry === '.' ? 'index' : entry.slice(2)}.html` }]
    : [],
)
await mkdir(folder, { recursive: true })
for (const { title, types, file } of entries) {
  const { own, passed, about } = await readTypes(types)
  const all = new Map()
  for (const word of [...own.keys(), ...passed.keys()]) {
    const found = await declaration(types, word)
    if (!found) throw new Error(`${word} of ${title} is declared nowhere`)
    all.set(word, found)
  }
  const groups = [...new Set(Object.values(kinds))].map((heading) => ({
    heading,
    words: [...all.keys()].filter((word) => kinds[all.get(word).kind] === heading).sort(),
  }))
  const nav = h(
    'nav',
    entries.map((other) => h('a', { href: other.file }, other.title)),
  )
  const content = [
    nav,
    h('h1', title),
    ...docOf(about).paragraphs.map((one) => h('p', inWords(one))),
    ...groups.flatMap(({ heading, words }) =>
      words.length > 0 ? [h('h2', heading), ...words.map((word) => entryView(word, all.get(word), all))] : [],
    ),
  ]
  await writeFile(join(folder, file), page(title, content))
  console.log(`Wrote ${join(folder, file)}: ${all.size} names`)
}
