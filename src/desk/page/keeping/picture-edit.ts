import type { Edit } from '../../engine/engine.ts'

/** An edit, and what of the new text is to be selected. */
export interface PictureEdit {
  readonly edit: Edit
  readonly from: number
  readonly to: number
}

/** Stands where the teacher writes what the picture shows, for those who do not see it. */
export const whatItShows = 'what it shows'

/**
 * Puts a picture into a lesson at the cursor. In the front matter or a block between fences it would be no picture, so
 * there it comes behind the block.
 */
export function pictureEdit(text: string, at: number, address: string): PictureEdit {
  const behind = behindBlock(text, at)
  const place = behind ?? at
  const before = behind !== undefined ? '\n' : /[^\s]$/.test(text.slice(0, place)) ? ' ' : ''
  const after = behind !== undefined ? '\n' : /^[^\s]/.test(text.slice(place)) ? ' ' : ''
  const lead = behind !== undefined && !text.slice(0, place).endsWith('\n') ? `\n${before}` : before
  const from = place + lead.length + '!['.length
  return {
    edit: { from: place, to: place, insert: `${lead}![${whatItShows}](${address})${after}` },
    from,
    to: from + whatItShows.length,
  }
}

/** Where the block ends that a place is in; undefined outside of one. */
function behindBlock(text: string, at: number): number | undefined {
  let start = 0
  let fence: string | undefined
  let opened = 0
  for (const line of text.split(/(?<=\n)/)) {
    const end = start + line.length
    if (fence === undefined) {
      const mark = start === 0 && /^---\s*$/.test(line) ? '---' : /^ {0,3}(`{3,}|~{3,})/.exec(line)?.[1]
      if (mark) [fence, opened] = [mark, start]
    } else if (closes(line, fence)) {
      fence = undefined
      // Behind the last line of the block one is outside of it only on the next line.
      if (at > opened && at < end) return end
    }
    start = end
  }
  return fence !== undefined && at > opened ? text.length : undefined
}

const closes = (line: string, fence: string): boolean => {
  const bare = line.trim()
  return fence === '---'
    ? bare === '---'
    : bare.startsWith(fence) && bare === bare.charAt(0).repeat(bare.length)
}
