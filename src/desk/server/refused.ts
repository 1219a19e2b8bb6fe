/** What is told besides the words. */
export interface RefusedMore {
  readonly suggestion?: string
  /** Headers of the answer, such as the methods that are allowed. */
  readonly headers?: Readonly<Record<string, string>>
  /** More for the program that asked. */
  readonly more?: Readonly<Record<string, unknown>>
}

/** Something that the desk does not do: why in plain words, what would help, and the number of it in HTTP. */
export class Refused extends Error {
  override readonly name = 'Refused'
  readonly status: number
  readonly suggestion: string | undefined
  readonly headers: Readonly<Record<string, string>>
  readonly more: Readonly<Record<string, unknown>>

  constructor(status: number, message: string, { suggestion, headers = {}, more = {} }: RefusedMore = {}) {
    super(message)
    this.status = status
    this.suggestion = suggestion
    this.headers = headers
    this.more = more
  }
}
