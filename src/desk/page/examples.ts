const files = import.meta.glob<string>('../../../lessons/*.md', {
  eager: true,
  query: '?raw',
  import: 'default',
})

/** A lesson that shows what can be done. */
export interface Example {
  readonly name: string
  readonly title: string
  readonly text: string
}

/** The example lessons, by title. */
export const examples: readonly Example[] = Object.entries(files)
  .map(([path, text]) => ({
    name: /([^/]+)\.md$/.exec(path)?.[1] ?? '',
    title: /^title: *(.+)$/m.exec(text)?.[1] ?? '',
    text,
  }))
  .sort((a, b) => a.title.localeCompare(b.title))
