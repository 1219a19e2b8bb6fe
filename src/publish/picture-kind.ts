/** Kinds of pictures by the first bytes of their files: the name of a file can say anything. */
const kinds: readonly (readonly [type: string, starts: (text: string) => boolean])[] = [
  ['image/png', (text) => text.startsWith('\x89PNG\r\n\x1a\n')],
  ['image/jpeg', (text) => text.startsWith('\xff\xd8\xff')],
  ['image/gif', (text) => /^GIF8[79]a/.test(text)],
  ['image/webp', (text) => /^RIFF....WEBP/s.test(text)],
  [
    'image/svg+xml',
    (text) =>
      /^(\xef\xbb\xbf)?\s*(<\?xml[^>]*>\s*)?(<!--(?:(?!-->).)*-->\s*|<!DOCTYPE[^>]*>\s*)*<svg[\s>]/s.test(
        text,
      ),
  ],
]

/** The kind of picture that a file is, as a media type; undefined when it is none that can be printed. */
export function pictureKind(content: Uint8Array): string | undefined {
  const start = String.fromCharCode(...content.subarray(0, 2000))
  return kinds.find(([, starts]) => starts(start))?.[0]
}
