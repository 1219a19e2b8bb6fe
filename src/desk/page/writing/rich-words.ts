/** A text with what stands in backticks set apart, made of nodes: nothing of it is read as HTML. */
export function richWords(text: string): DocumentFragment {
  const all = document.createDocumentFragment()
  for (const [i, part] of text.split('`').entries()) {
    if (part === '') continue
    if (i % 2 === 0) all.append(part)
    else {
      const code = document.createElement('code')
      code.textContent = part
      all.append(code)
    }
  }
  return all
}
