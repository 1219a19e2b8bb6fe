import { OutsideError } from '../../publish/problems.ts'

/** Why something of a library cannot be read, in plain words, and what would cure it. */
const reasons: Readonly<Record<string, readonly [why: string, cure: string]>> = {
  EACCES: ['you may not', 'Ask for the right to it'],
  EPERM: ['you may not', 'Ask for the right to it'],
  EFBIG: ['more than 20 MB is no lesson', 'Make it smaller, or give it another ending than `.md`'],
  ELOOP: ['its links lead round in a circle', 'Take the link away'],
  EMFILE: ['too many files are open', 'Close some programs and try again'],
  EIO: ['the disk, or what is in its place, cannot', 'Copy the lessons to another disk'],
  EBUSY: ['another program keeps writing it', 'Wait until that program is done'],
  ETIMEDOUT: ['it is a pipe, and nothing comes through it', 'Give it another ending than `.md`'],
}

/** @param beginning such as `Cannot read a file`: the same for all, so that many of them are told together. */
export function unread(error: unknown, beginning: string): OutsideError {
  const { code = '', message = '' } = error as NodeJS.ErrnoException
  const [why, cure] = reasons[code] ?? [message, 'Look at it in another program']
  return new OutsideError(
    `${beginning}: ${why}`,
    `${cure}, or name it behind \`leave out\` in \`library.yaml\``,
  )
}

/** Whether it has gone away since its folder was looked into, or is a linked folder: nobody wants to hear of that. */
export const isPassedOver = (error: unknown): boolean =>
  ['ENOENT', 'EISDIR'].includes((error as NodeJS.ErrnoException).code ?? '')
