const keyOf = (title: string): string => `step of ${title}`

/** The step of a lesson that was looked at last in this tab. */
export function rememberedStep(title: string): number | undefined {
  try {
    const step = Number(sessionStorage.getItem(keyOf(title)))
    return Number.isInteger(step) && step > 0 ? step : undefined
  } catch {
    // A browser may be told to keep nothing.
    return undefined
  }
}

export function rememberStep(title: string, step: number): void {
  try {
    sessionStorage.setItem(keyOf(title), String(step))
  } catch {
    // Then it begins again at the first step.
  }
}
