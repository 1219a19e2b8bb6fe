import type { Stream } from 'node:stream'
import { strFromU8, unzipSync } from 'fflate'
import type { Feature } from 'write-excel-file/node'

const path = 'docProps/core.xml'
const creator = '<dc:creator>foldlore</dc:creator>'
/** What says of a workbook who made it is short; whatever is longer was made by others. */
const longest = 10_000

/** Says in the properties of a workbook what it is called, and that foldlore made it (ECMA-376 part 2, core properties). */
export const workbookMark = (title: string): Feature<Stream | Buffer | Blob> => ({
  files: {
    transform: {
      '[Content_Types].xml': {
        insert: () =>
          `<Override PartName="/${path}" ContentType="application/vnd.openxmlformats-package.core-properties+xml"/>`,
      },
      '_rels/.rels': {
        insert: () =>
          `<Relationship Id="rId-foldlore-1" Type="http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties" Target="${path}"/>`,
      },
    },
    write: {
      files: () => ({
        [path]: `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title>${escaped(title)}</dc:title>${creator}</cp:coreProperties>`,
      }),
    },
  },
})

/** Whether foldlore made a workbook, judged by its properties. */
export function isOurWorkbook(content: Uint8Array): boolean {
  try {
    const parts = unzipSync(content, {
      filter: ({ name, originalSize }) => name === path && originalSize < longest,
    })
    const properties = parts[path]
    return properties !== undefined && strFromU8(properties).includes(creator)
  } catch {
    // It only looks like one.
    return false
  }
}

const escaped = (text: string): string =>
  text
    .replaceAll(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
