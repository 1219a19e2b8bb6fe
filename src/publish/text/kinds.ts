/** How a lesson is told as text. */
export const textKinds = ['text', 'md'] as const
export type TextKind = (typeof textKinds)[number]
