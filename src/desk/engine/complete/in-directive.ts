import type { Completion } from '../complete.ts'
import type { Site } from '../site/site.ts'
import { directiveHelp, directivesWith } from '../vocabulary/directive-words.ts'

/** What may stand behind colons. In the middle of a line that is only what stands in a line. */
export function directiveCompletions(site: Extract<Site, { kind: 'directive' }>): Completion[] {
  if (!site.isAlone && site.colons > 1) return []
  const counts = site.isAlone ? [1, 2, 3].filter((count) => count >= Math.min(site.colons, 3)) : [1]
  return counts.flatMap(directivesWith).map(
    (name): Completion => ({
      insert: directiveHelp[name].begin,
      from: site.from,
      label: /^:+[a-z]+/.exec(directiveHelp[name].begin)?.[0] ?? name,
      info: directiveHelp[name].help,
      kind: 'directive',
    }),
  )
}
