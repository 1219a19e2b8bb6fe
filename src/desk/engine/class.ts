/** What a class needs, as the body of a page for each part. */
export interface ClassAnswer {
  readonly parts: readonly { readonly name: string; readonly title: string; readonly html: string }[]
  readonly findings: readonly {
    readonly severity: string
    readonly message: string
    readonly suggestion?: string
  }[]
}
