/** What files can be written for. */
export const exportKinds = ['svg', 'dxf', 'fold'] as const
export type ExportKind = (typeof exportKinds)[number]
