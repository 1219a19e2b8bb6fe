import { resolve } from 'node:path'
import { hasErrors } from '../../length/finding.ts'
import { tieLesson } from '../../lesson/loose/tie.ts'
import { findingJson } from '../../workshop/finding-json.ts'
import { foldInWords, startingBlock } from '../../workshop/fold-in-words.ts'
import { listingText } from '../../workshop/listing-text.ts'
import { leftJson, placedJson } from '../../workshop/tied-json.ts'
import { tiedListing } from '../../workshop/tied-listing.ts'
import { answer, asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { tellFindings } from '../lesson-file.ts'
import type { Outside } from '../outside.ts'
import { exitCodes } from '../problems.ts'
import { readText } from '../read-text.ts'

/**
 * `tie FILE`: the tutorial with names for its numbers, to the terminal or to the file that `-o` names. What has become of
 * each number is told besides. The tutorial itself is written over only if `-o` names it.
 */
export const tie: Action = async ([path = ''], options, outside) => {
  const text = await readText(path, outside)
  const tied = tieLesson(text)
  const isItself = options.output !== undefined && resolve(options.output) === resolve(path)
  const writing = isItself ? { ...options, force: true } : options
  // An answer for programs is no tutorial.
  const { output: _, ...toTerminal } = options
  const failed = !tied.hasCard || hasErrors(tied.errors)
  if (options.json) {
    await answer(
      asJson({
        text: tied.text,
        placed: tied.placed.map(placedJson),
        left: [...tied.front, ...tied.left].map((number) => leftJson(number, tied.unit)),
        ...(!tied.hasCard && { startingBlock: blockFor(text) ?? null }),
        findings: tied.errors.map(findingJson),
      }),
      isItself ? toTerminal : options,
      outside,
    )
    return failed ? exitCodes.lessonErrors : exitCodes.done
  }
  if (!tied.hasCard) return tellNoCard(path, text, outside)
  if (!tellFindings(path, tied.errors, options, outside) && tied.placed.length === 0)
    return exitCodes.lessonErrors
  await answer(tied.text, writing, outside)
  // The table goes where the tutorial does not.
  const tell = options.output === undefined ? outside.stderr : outside.stdout
  if (!options.quiet) tell(listingText(tiedListing(tied)))
  return failed ? exitCodes.lessonErrors : exitCodes.done
}

const blockFor = (text: string): string | undefined => {
  const style = foldInWords(text)
  return style && startingBlock(style, text)
}

function tellNoCard(path: string, text: string, { stderr }: Outside): number {
  const block = blockFor(text)
  const cure = block
    ? `Put a block such as this above the steps, change it to your card, and tie it again:\n\n${block}\n`
    : 'Add a block that starts with three backticks and `card`, and says `fold:` and `closed:`; `foldlore folds` shows the folds\n'
  stderr(`${path}: the tutorial has no card block, so its numbers can have no names\n  ${cure}`)
  return exitCodes.lessonErrors
}
