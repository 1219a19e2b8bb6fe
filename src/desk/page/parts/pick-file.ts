/** Lets the teacher choose files; none when the window is closed without. To be called from a click. */
export function pickFile(accept: string): Promise<readonly File[]> {
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = accept
  return new Promise((resolve) => {
    input.addEventListener('change', () => resolve([...(input.files ?? [])]))
    input.addEventListener('cancel', () => resolve([]))
    input.click()
  })
}
