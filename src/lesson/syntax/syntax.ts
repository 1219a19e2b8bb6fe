import { directiveFromMarkdown } from 'mdast-util-directive'
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table'
import { mdxExpressionFromMarkdown } from 'mdast-util-mdx-expression'
import { gfmTable } from 'micromark-extension-gfm-table'
import remarkFrontmatter from 'remark-frontmatter'
// Only for the fields of `processor.data()` that it declares.
import type {} from 'remark-parse'
import type { Processor } from 'unified'
import { lessonBraces } from './braces.ts'
import { lessonDirectives } from './directives.ts'

/**
 * A unified plugin: adds to remark-parse what a lesson has besides CommonMark, namely front matter, tables,
 * our directives and braces. The tree has directive and expression nodes afterwards.
 */
export function lessonSyntax(this: Processor, options: { callouts?: boolean } = {}): undefined {
  remarkFrontmatter.call(this, ['yaml'])
  const data = this.data()
  data.micromarkExtensions ??= []
  data.micromarkExtensions.push(gfmTable(), lessonDirectives(options), lessonBraces())
  data.fromMarkdownExtensions ??= []
  data.fromMarkdownExtensions.push(
    gfmTableFromMarkdown(),
    directiveFromMarkdown({ verbose: true }),
    mdxExpressionFromMarkdown(),
  )
}
