/**
 * A PDF whose viewer preferences say that it is printed as it is, neither fitted to the page nor shrunk (ISO 32000-1,
 * 12.2: PrintScaling None). All else of it is kept.
 */
export async function atRealSize(pdf: Uint8Array): Promise<Uint8Array> {
  const { PDFDocument, PrintScaling } = await import('@cantoo/pdf-lib')
  const document = await PDFDocument.load(pdf, { updateMetadata: false })
  document.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None)
  return document.save({ useObjectStreams: false })
}
