import type { Work } from './work.ts'

/** A tool or a supply of the trade. */
export interface Tool {
  readonly name: string
  /** What else it is called, in the singular: British, American and short. */
  readonly words?: readonly string[]
  /** Tools it is a kind of: whoever asks for tape can be given foam tape. */
  readonly is?: readonly string[]
  /** What it is needed for, even where a step does not name it. */
  readonly work?: readonly Work[]
}
