/** Characters of a lesson. A long one has a tenth of it; the time that it takes to read grows with it. */
const longest = 200_000
/** Emphasis in one paragraph. The time that it takes to pair the signs grows with the square of their number. */
const mostStars = 1000
/** Brackets within brackets in one paragraph. */
const deepest = 50

/**
 * Characters without an empty line. With thousands of measures in one paragraph the time that it takes to read them grows
 * faster than their number.
 */
const longestParagraph = 50_000

/** Where a lesson is too much to be read, and what to say of it. */
export interface TooMuch {
  /** Offsets in the text: all before `start` can be read. */
  readonly start: number
  readonly end: number
  readonly message: string
  readonly suggestion: string
}

/** Looks for what would take very long to read: undefined in any lesson that a person has written. */
export function tooMuchIn(text: string): TooMuch | undefined {
  const long = tooLongAt(text)
  return busyAt(long ? text.slice(0, long.start) : text) ?? long
}

/** The line with which a text gets too long. */
function tooLongAt(text: string): TooMuch | undefined {
  if (text.length <= longest) return undefined
  return {
    start: lineStart(text, longest),
    end: text.length,
    message: `The lesson has ${text.length} characters, and ${longest} is the most: from here on it is not read`,
    suggestion: 'Make several lessons of it',
  }
}

/** The first paragraph that is too long, or has too many signs in it. */
function busyAt(text: string): TooMuch | undefined {
  let [stars, depth, start] = [0, 0, 0]
  for (const { 0: sign, index } of text.matchAll(/\n[ \t]*\r?(?=\n)|[*_]+|[[\]]|$/g)) {
    if (index - start > longestParagraph) return tooLongParagraph(start, index)
    if (sign[0] === '\n') [stars, depth, start] = [0, 0, index]
    else if (sign === '[') depth++
    else if (sign === ']') depth = Math.max(0, depth - 1)
    else if (sign) stars++
    if (depth > deepest || stars > mostStars)
      return {
        start: behind(start),
        end: index + sign.length,
        message:
          depth > deepest
            ? `Brackets stand more than ${deepest} deep in each other in this paragraph: from here on the lesson is not read`
            : `This paragraph has more than ${mostStars} signs of emphasis: from here on the lesson is not read`,
        suggestion:
          depth > deepest ? 'Close each `[` with a `]`, or write `\\[`' : 'Make several paragraphs of it',
      }
  }
  return undefined
}

const tooLongParagraph = (start: number, end: number): TooMuch => ({
  start: behind(start),
  end,
  message: `This paragraph has more than ${longestParagraph} characters: from here on the lesson is not read`,
  suggestion: 'Make several paragraphs of it, with an empty line between them',
})

/** Where the text goes on behind the end of a line, if there is one before it. */
const behind = (start: number): number => (start === 0 ? 0 : start + 1)

const lineStart = (text: string, from: number): number => text.lastIndexOf('\n', from - 1) + 1
