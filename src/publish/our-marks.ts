/** What stands in every page that foldlore makes. */
export const htmlMark = '<meta name="generator" content="foldlore">'
/** What stands in every PDF that foldlore makes, in its document information. */
export const pdfMark = '/Creator (foldlore)'

/** What stands in the drawings and models that foldlore makes: SVG, DXF and FOLD. */
export const drawingMarks = {
  svg: '<metadata>foldlore</metadata>',
  dxf: '999\nfoldlore\n',
  fold: '"file_creator": "foldlore"',
} as const
