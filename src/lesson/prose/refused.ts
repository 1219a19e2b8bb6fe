/** Whether the words round a tool say that it is not used: `no knife`, `without a knife`, `a knife is not needed`. */
export const isRefused = (before: string, after: string): boolean =>
  /\b(?:no|without|instead of|rather than|(?:not|never|n['’]t) (?:use|take|need))(?: an?| any| the| sharp| hot)* $/i.test(
    before,
  ) || /^ (?:is|are) (?:not|never) (?:needed|used|wanted)\b/i.test(after)
