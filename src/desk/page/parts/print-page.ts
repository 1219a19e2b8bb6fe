/**
 * Prints a page that stands alone through the browser's own print window. Nothing runs in it, and it is taken away when
 * the window is closed.
 *
 * @param html the whole page.
 */
export async function printPage(html: string): Promise<void> {
  const frame = document.createElement('iframe')
  frame.setAttribute('sandbox', 'allow-same-origin allow-modals')
  frame.title = 'What is being printed'
  frame.className = 'printing'
  const loaded = new Promise((resolve) => frame.addEventListener('load', resolve, { once: true }))
  frame.srcdoc = html
  document.body.append(frame)
  await loaded
  const own = frame.contentWindow
  await frame.contentDocument?.fonts.ready.catch(() => {})
  own?.addEventListener('afterprint', () => setTimeout(() => frame.remove(), 500))
  own?.focus()
  own?.print()
}
