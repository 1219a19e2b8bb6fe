import fc from 'fast-check'
import { expect, test } from 'vitest'
import { asWritten, plainText } from '../../../src/desk/page/keeping/as-written.ts'

const ends = fc.constantFrom('\n', '\r\n', '\r')
const line = fc.constantFrom('', 'a', 'Cut the base', 'é', 'b')
/** Lines with any ends, and perhaps a mark before them. Where a `\r` meets an empty line and a `\n`, they are one end. */
const file = fc
  .tuple(fc.boolean(), fc.array(fc.tuple(line, ends), { maxLength: 12 }), line)
  .map(
    ([mark, lines, last]) => (mark ? '\ufeff' : '') + lines.map(([text, end]) => text + end).join('') + last,
  )

test('a text that was not changed is the file again, whatever ends its lines have', () => {
  fc.assert(
    fc.property(file, (before) => {
      expect(asWritten(plainText(before), before)).toBe(before)
    }),
  )
})

test('an editor sees the text that was meant, whatever the file was', () => {
  fc.assert(
    fc.property(file, file, (before, text) => {
      expect(plainText(asWritten(text, before))).toBe(plainText(text))
      expect(plainText(text)).not.toMatch(/\r/)
    }),
  )
})

test('what is written into one line leaves every byte of the other lines as it is', () => {
  fc.assert(
    fc.property(file, fc.nat(), (before, at) => {
      const lines = plainText(before).split('\n')
      const i = at % lines.length
      const now = asWritten(lines.with(i, 'written anew').join('\n'), before)
      const parts = (text: string) => text.replace(/^\ufeff/, '').split(/(?<=\r\n|\r(?!\n)|\n)/)
      const [old, fresh] = [before, now].map((text) => {
        const all = parts(text)
        return all.at(-1)?.match(/[\r\n]$/) || all.length === 0 ? [...all, ''] : all
      }) as [string[], string[]]
      expect(fresh.toSpliced(i, 1)).toEqual(old.toSpliced(i, 1))
    }),
  )
})

test('a line end is never made of two', () => {
  expect(asWritten('written anew\n\n\n\n\n', '\n\n\r\r\r')).toBe('written anew\n\n\r\r\r')
  expect(plainText(asWritten('a\nb\n\nc', '\r\r\r\na\n\nc'))).toBe('a\nb\n\nc')
})

test('new lines end as most lines of the file do', () => {
  expect(asWritten('a\nnew\nb\n', '\ufeffa\r\nb\r\n')).toBe('\ufeffa\r\nnew\r\nb\r\n')
  expect(asWritten('a\nb', '')).toBe('a\nb')
  expect(asWritten('a\nb\nc', 'a\r\nb')).toBe('a\r\nb\r\nc')
})
